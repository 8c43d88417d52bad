#include "drawing/pictures.h"

#include "drawing/charted_lamps.h"
#include "drawing/eye_view.h"
#include "drawing/vehicle_view.h"
#include "geometry/field.h"
#include "judgement/new_look.h"
#include "judgement/plan.h"
#include "words/look_words.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

constexpr Bearing on_axis{};

/// Counted from an axis that points outboard it would be 45 degrees to the rear.
constexpr Bearing across_vehicle{degrees(-45), degrees(0)};

struct WantedEye {
    std::size_t look;
    Bearing toward;
    std::vector<std::size_t> checks;
};

bool has_direction(const LampLook& look, const Bearing& toward)
{
    return std::binary_search(look.toward.begin(), look.toward.end(), toward, by_v_then_h);
}

/// Collects what is to be pictured, each eye once.
class WantedEyes {
public:
    explicit WantedEyes(const std::vector<LampLook>& looks) : looks_(looks) {}

    void add(std::size_t check, const LampVerdict& verdict)
    {
        const LampLook& look = looks_[verdict.look];
        std::vector<Bearing> toward = {look.toward[worst_at(verdict)], on_axis};
        for (const Bearing& corner : corners_of(verdict.field))
            toward.push_back(corner);
        if (look.axis != ReferenceAxis::outboard)
            toward.push_back(across_vehicle);
        for (const Bearing& b : toward)
            add({verdict.look, b, {check}});
    }

    std::vector<WantedEye> take() { return std::move(wanted_); }

private:
    void add(WantedEye eye)
    {
        for (WantedEye& known : wanted_) {
            if (known.toward != eye.toward || !show_alike(known.look, eye.look))
                continue;
            if (known.checks.back() != eye.checks.front())
                known.checks.push_back(eye.checks.front());
            if (!has_direction(looks_[known.look], eye.toward))
                known.look = eye.look;
            return;
        }
        wanted_.push_back(std::move(eye));
    }

    /// The state of load moves no surface.
    bool show_alike(std::size_t a, std::size_t b) const
    {
        const LampLook &one = looks_[a], &other = looks_[b];
        return a == b || (one.name == other.name && one.twin == other.twin &&
                          one.obstacles == other.obstacles && one.axis == other.axis &&
                          same_frame(one.frame, other.frame));
    }

    const std::vector<LampLook>& looks_;
    std::vector<WantedEye> wanted_;
};

/// The foremost one first, then the row's other lamps that are drawn.
void add_eyes(WantedEyes& wanted, const Findings& findings, const ChartedLamp& foremost)
{
    wanted.add(foremost.check, verdict_at(findings, foremost));
    for (const ChartedLamp& place : charted_lamps(findings, foremost.check))
        if (place != foremost)
            wanted.add(place.check, verdict_at(findings, place));
}

class PictureMaker {
public:
    PictureMaker(const Session& session, const Findings& findings, const Workers& workers)
        : session_(session), findings_(findings), workers_(workers)
    {
    }

    Pictures make()
    {
        WantedEyes wanted(findings_.looks);
        std::vector<std::pair<std::size_t, const LampVerdict*>> corners;
        for (std::size_t check = 0; check < findings_.checks.size(); ++check)
            if (const auto foremost = foremost_charted(findings_, check)) {
                add_eyes(wanted, findings_, *foremost);
                corners.emplace_back(check, &verdict_at(findings_, *foremost));
            }
        std::vector<WantedEye> eyes = wanted.take();
        all_ = eyes.size() + corners.size();
        Pictures pictures;
        for (WantedEye& eye : eyes)
            pictures.eyes.push_back(picture_of(std::move(eye)));
        for (const auto& [check, verdict] : corners) {
            pictures.vehicles.push_back(
                {check, vehicle_view(session_, findings_.looks[verdict->look], *verdict,
                                     workers_.silent())});
            tell();
        }
        return pictures;
    }

private:
    EyePicture picture_of(WantedEye eye)
    {
        const EyeView& view = views_
                                  .try_emplace(eye.look, session_.study(), session_.scene(),
                                               findings_.looks[eye.look])
                                  .first->second;
        EyePicture picture{eye.look, eye.toward, view.toward(eye.toward, workers_.silent()),
                           std::move(eye.checks)};
        tell();
        return picture;
    }

    void tell()
    {
        ++done_;
        if (workers_.progress)
            workers_.progress(done_, all_);
    }

    const Session& session_;
    const Findings& findings_;
    const Workers& workers_;
    std::map<std::size_t, EyeView> views_; ///< by look
    std::size_t done_ = 0, all_ = 0;
};

} // namespace

Pictures pictures_of(const Session& session, const Findings& findings, const Workers& workers)
{
    return PictureMaker(session, findings, workers).make();
}

} // namespace glim
