#include "report/write_comparison.h"

#include "report/comparison_json.h"
#include "report/html_page.h"
#include "report/pdf_pages.h"
#include "words/comparison_words.h"

namespace glim {

void write_comparison(const Comparison& comparison, const ComparedPictures& pictures,
                      const std::vector<std::string>& names, NewFolder& folder)
{
    const Document document = comparison_document(comparison, pictures, names);
    folder.put("comparison.html", html_page(document));
    folder.put("comparison.pdf", pdf_pages(document));
    folder.put("comparison.json", text_of(comparison_json(comparison)));
    folder.put("comparison.csv", comparison_csv(comparison));
    folder.put("comparison.txt", comparison_words(comparison, {}));
    folder.commit();
}

} // namespace glim
