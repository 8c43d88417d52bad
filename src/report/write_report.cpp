#include "report/write_report.h"

#include "machine/stop.h"
#include "report/html_page.h"
#include "report/pdf_pages.h"
#include "report/report_document.h"
#include "report/write_results.h"

namespace glim {

namespace {

Progress stoppable(const Progress& progress, const std::stop_token& stop)
{
    return [&progress, stop](std::size_t done, std::size_t all) {
        if (progress)
            progress(done, all);
        throw_if_stopped(stop);
    };
}

} // namespace

void write_report(const ReportContent& content, const Study& study, NewFolder& folder,
                  const ReportProgress& progress)
{
    const Document document = report_document(content);
    folder.put("report.html", html_page(document, stoppable(progress.figures, progress.stop)));
    folder.put("report.pdf", pdf_pages(document, stoppable(progress.pages, progress.stop)));
    write_results(content.findings, study, content.facts, folder);
}

} // namespace glim
