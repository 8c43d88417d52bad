#include "report/views_section.h"

#include "report/answer_words.h"
#include "words/name_list.h"

#include <algorithm>

namespace glim {

namespace {

const Figure* vehicle_picture(const ReportContent& content, std::size_t check)
{
    for (const VehiclePicture& picture : content.figures.pictures.vehicles)
        if (picture.check == check)
            return &picture.figure;
    return nullptr;
}

} // namespace

const Figure* first_picture(const ReportContent& content)
{
    for (const std::size_t check : worst_first(content.findings))
        if (const Figure* picture = vehicle_picture(content, check))
            return picture;
    return nullptr;
}

std::vector<Block> vehicle_section(const ReportContent& content, std::size_t check)
{
    const Figure* picture = vehicle_picture(content, check);
    if (!picture || picture == first_picture(content))
        return {};
    return {Figures{{*picture}}};
}

std::vector<Block> views_section(const ReportContent& content, std::size_t check)
{
    Figures here;
    std::vector<std::string> elsewhere;
    for (const EyePicture& picture : content.figures.pictures.eyes) {
        const std::vector<std::size_t>& checks = picture.checks;
        if (std::find(checks.begin(), checks.end(), check) == checks.end())
            continue;
        if (checks.front() == check)
            here.figures.push_back(picture.figure);
        else
            elsewhere.push_back(picture.figure.title + " (under \u201c" +
                                content.findings.checks[checks.front()].name + "\u201d)");
    }
    std::vector<Block> blocks;
    if (here.figures.empty() && elsewhere.empty())
        return blocks;
    blocks.push_back(Heading{2, "What the eye sees"});
    if (!here.figures.empty())
        blocks.push_back(std::move(here));
    if (!elsewhere.empty()) {
        blocks.push_back(Paragraph{"Shown already: " + name_list(elsewhere) + "."});
    }
    return blocks;
}

} // namespace glim
