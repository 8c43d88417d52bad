#include "report/write_report.h"

#include "report/html_page.h"
#include "report/pdf_pages.h"
#include "report/report_document.h"
#include "report/write_results.h"

namespace glim {

void write_report(const ReportContent& content, const Study& study, NewFolder& folder,
                  const ReportProgress& progress)
{
    const Document document = report_document(content);
    folder.put("report.html", html_page(document, progress.figures));
    folder.put("report.pdf", pdf_pages(document, progress.pages));
    write_results(content.findings, study, content.facts, folder);
}

} // namespace glim
