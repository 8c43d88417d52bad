#include "report/write_situations.h"

#include "report/html_page.h"
#include "report/pdf_pages.h"
#include "report/run_facts.h"
#include "report/situations_document.h"
#include "report/situations_json.h"
#include "words/situation_words.h"

namespace glim {

namespace {

/// What the user named, states and parts too.
std::vector<std::string> names_in(const Study& study, const std::string& command)
{
    std::vector<std::string> names = run_facts(study, "", command).names;
    for (const GroundState& ground : study.grounds)
        names.push_back(ground.state);
    for (const MovedPart& part : study.moved_parts) {
        names.push_back(part.name);
        for (const PartPosition& position : part.positions)
            names.push_back(position.name);
    }
    return names;
}

} // namespace

void write_situations(const SituationFindings& found, const Study& study, std::vector<Figure> views,
                      const std::string& command, NewFolder& folder)
{
    const Document document =
        situations_document(found, study, std::move(views), names_in(study, command), command);
    folder.put("states.html", html_page(document));
    folder.put("states.pdf", pdf_pages(document));
    folder.put("states.json", text_of(situations_json(found, study, command)));
    folder.put("states.csv", situations_csv(found, study));
    folder.put("states.txt", situations_words(found, study));
    folder.commit();
}

} // namespace glim
