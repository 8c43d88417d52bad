#include "report/document.h"

#include <iterator>

namespace glim {

std::string caption_of(const Figure& figure)
{
    return figure.caption.starts_with(figure.title) ? figure.caption
                                                    : figure.title + ". " + figure.caption;
}

void append(std::vector<Block>& blocks, std::vector<Block> more)
{
    blocks.insert(blocks.end(), std::make_move_iterator(more.begin()),
                  std::make_move_iterator(more.end()));
}

} // namespace glim
