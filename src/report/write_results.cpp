#include "report/write_results.h"

#include "report/directions_csv.h"
#include "report/result_json.h"
#include "report/summary.h"
#include "report/verdicts_csv.h"

namespace glim {

void write_results(const Findings& findings, const RunFacts& facts, NewFolder& folder)
{
    folder.put("result.json", text_of(result_json(findings, facts)));
    folder.put("directions.csv", directions_csv(findings));
    folder.put("verdicts.csv", verdicts_csv(findings));
    folder.put("summary.txt", summary(findings, facts));
    folder.commit();
}

} // namespace glim
