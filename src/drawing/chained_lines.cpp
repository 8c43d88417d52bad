#include "drawing/chained_lines.h"

#include <map>
#include <optional>

namespace glim {

namespace {

class Chainer {
public:
    explicit Chainer(std::span<const LineStep> steps) : steps_(steps), used_(steps.size())
    {
        for (std::size_t i = 0; i < steps.size(); ++i) {
            starting_[steps[i].from].push_back(i);
            ++surplus_[steps[i].from];
            --surplus_[steps[i].to];
        }
    }

    std::vector<ChainedLine> lines()
    {
        std::vector<ChainedLine> all;
        // An open line begins where more steps leave than arrive.
        for (std::size_t i = 0; i < steps_.size(); ++i)
            while (!used_[i] && surplus_[steps_[i].from] > 0) {
                --surplus_[steps_[i].from];
                all.push_back(line_from(i));
            }
        for (std::size_t i = 0; i < steps_.size(); ++i)
            if (!used_[i])
                all.push_back(line_from(i));
        return all;
    }

private:
    ChainedLine line_from(std::size_t step)
    {
        ChainedLine line{{steps_[step].from}, false};
        for (std::optional<std::size_t> next = step; next; next = unused_from(line.points.back())) {
            used_[*next] = true;
            if (steps_[*next].to == line.points.front()) {
                line.closed = true;
                break;
            }
            line.points.push_back(steps_[*next].to);
        }
        return line;
    }

    std::optional<std::size_t> unused_from(std::uint64_t point) const
    {
        const auto found = starting_.find(point);
        if (found != starting_.end())
            for (const std::size_t i : found->second)
                if (!used_[i])
                    return i;
        return std::nullopt;
    }

    std::span<const LineStep> steps_;
    std::vector<bool> used_;
    std::map<std::uint64_t, std::vector<std::size_t>> starting_;
    std::map<std::uint64_t, int> surplus_;
};

} // namespace

std::vector<ChainedLine> chained(std::span<const LineStep> steps) { return Chainer(steps).lines(); }

} // namespace glim
