#include "report/write_relief.h"

#include "report/put_relief.h"
#include "report/relief_json.h"
#include "words/relief_words.h"

namespace glim {

void write_relief(const Relief& relief, const Study& study, const std::filesystem::path& target,
                  NewFolder& folder)
{
    folder.put("relief.json", text_of(relief_json(relief, study)));
    folder.put("relief.txt", relief_words(relief, study));
    put_relief(relief, study, target, folder);
    folder.commit();
}

} // namespace glim
