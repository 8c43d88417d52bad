#include "report/write_margins.h"

#include "report/html_page.h"
#include "report/margins_document.h"
#include "report/margins_json.h"
#include "report/pdf_pages.h"
#include "words/margin_words.h"

namespace glim {

void write_margins(const MarginFindings& found, const Study& study,
                   const std::vector<std::string>& names, const std::string& command,
                   NewFolder& folder)
{
    const Document document = margins_document(found, study, names, command);
    folder.put("margins.html", html_page(document));
    folder.put("margins.pdf", pdf_pages(document));
    folder.put("margins.json", text_of(margins_json(found, study)));
    folder.put("margins.csv", margins_csv(found, study));
    folder.put("margins.txt", margin_words(found, study));
    folder.commit();
}

} // namespace glim
