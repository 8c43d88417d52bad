#include "report/report_document.h"

#include "report/answer_chapter.h"
#include "report/caution_chapter.h"
#include "report/check_chapter.h"
#include "report/identity_chapter.h"
#include "report/typeset_document.h"

#include <utility>

namespace glim {

namespace {

std::string title_of(const ReportContent& content)
{
    const std::string& title = content.findings.title;
    return "Lamp visibility: " + (title.empty() ? content.facts.study : title);
}

} // namespace

Document report_document(const ReportContent& content)
{
    Document document{title_of(content), content.date, answer_chapter(content)};
    for (std::size_t check = 0; check < content.findings.checks.size(); ++check)
        append(document.blocks, check_chapter(content, check));
    append(document.blocks, identity_chapter(content));
    append(document.blocks, caution_chapter(content));
    return typeset_document(std::move(document), content.facts.names);
}

} // namespace glim
