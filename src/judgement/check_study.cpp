#include "judgement/check_study.h"

#include "judgement/session.h"

namespace glim {

Findings check_study(const Study& study, const Workers& workers)
{
    const Session session(study);
    return session.check(session.all_checks(), study.sampling.step, workers);
}

} // namespace glim
