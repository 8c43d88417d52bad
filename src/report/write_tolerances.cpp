#include "report/write_tolerances.h"

#include "report/html_page.h"
#include "report/pdf_pages.h"
#include "report/tolerances_document.h"
#include "report/tolerances_json.h"
#include "words/tolerance_words.h"

namespace glim {

void write_tolerances(const ToleranceFindings& found, const Study& study,
                      const std::vector<std::string>& names, const std::string& command,
                      NewFolder& folder)
{
    const Document document = tolerances_document(found, study, names, command);
    folder.put("tolerances.html", html_page(document));
    folder.put("tolerances.pdf", pdf_pages(document));
    folder.put("tolerances.json", text_of(tolerances_json(found, study, command)));
    folder.put("contributions.csv", contributions_csv(found, study));
    folder.put("builds.csv", build_bins_csv(found));
    folder.put("tolerances.txt", tolerances_words(found, study));
    folder.commit();
}

} // namespace glim
