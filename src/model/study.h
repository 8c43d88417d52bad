#pragma once

#include "geometry/mesh_health.h"
#include "model/add_lamp_task.h"
#include "model/complaint.h"
#include "model/keep_clear_wish.h"
#include "model/lamp_light.h"
#include "model/move_lamp_task.h"
#include "model/moved_part.h"
#include "model/option.h"
#include "model/relief_wish.h"
#include "model/rule.h"
#include "model/variation.h"
#include "model/vehicle.h"

namespace glim {

/// In which directions contours prove the bounds of areas. Rows of obstacles are proved everywhere
/// in any case.
enum class Certify {
    nowhere,
    coarse, ///< every 5 degrees; everywhere, if there it turns out that samples missed what counts
    everywhere,
};
struct CertifyWord {
    Certify certify;
    std::string_view word;
};
inline constexpr std::array certify_words = {
    CertifyWord{Certify::nowhere, "nowhere"},
    CertifyWord{Certify::coarse, "coarse"},
    CertifyWord{Certify::everywhere, "everywhere"},
};

/// How finely to look. Each has a default that serves; `docs/accuracy.md` tells what they cost.
struct Sampling {
    Angle step = degrees(1);          ///< between neighbouring directions
    Length feature = millimetres(1);  ///< the smallest obstacle that must not be missed
    Length touch = millimetres(0.05); ///< nearer than this to the lit face, nothing blocks
    /// A hidden strip of this width along the lit outline is touching, not hiding.
    Length hairline = millimetres(0.001);
    Certify certify = Certify::coarse;
    Angle finest = degrees(0.1); ///< how near crossings are brought, and how finely to subdivide
};

/// What is known of one mesh file, for the report's reader.
struct MeshSource {
    std::string name;
    std::string file; ///< as the study writes it
    std::string unit;
    std::string up;
    std::string forward;
    MeshHealth health;
    Chord chord = {};
    FileIdentity is = {};
};

/// One question: do these lamps meet this rule?
struct Check {
    std::string name;      ///< unique in the study
    std::size_t table = 0; ///< place in Study::tables
    std::string rule;      ///< a rule or a row of that table
    std::vector<LampId> lamps;
    std::string state = {};                ///< of load, for every row; empty: each row's own
    std::vector<std::string> options = {}; ///< ids chosen where the rule offers a choice
};

/// Everything that the user said, in one frame and one unit.
struct Study {
    std::string file; ///< as given on the command line
    std::string title;
    Vehicle vehicle;
    /// One a state, those of rules first; of these there is one at least once the study is read.
    std::vector<GroundState> grounds;
    std::vector<MeshSource> meshes;
    Slots<SurfaceId, Surface> surfaces;
    Slots<LampId, Lamp> lamps;
    std::vector<LampLight> lights; ///< of lamps with a photometric file; one a lamp at most
    std::vector<RuleTable> tables;
    std::vector<Check> checks;
    Sampling sampling;
    std::optional<AddLampTask> add_lamp;   ///< where the study asks for it
    std::optional<MoveLampTask> move_lamp; ///< likewise
    ReliefWish relief = {};
    KeepClearWish keep_clear = {};
    std::vector<Option> options;    ///< to compare
    std::optional<Programme> costs; ///< of which the options' costs are a part
    Variation variation = {};       ///< tolerances
    std::vector<MovedPart> moved_parts;
    std::vector<Warning> warnings;
    /// Everything that was read for it, itself first; each once.
    std::vector<SourceFile> files;

    /// None where the lamp has no photometric file.
    const LampLight* light_of(LampId lamp) const;
    /// None where no check names it, nor a row that a check stands on.
    const RuleTable* table_named(std::string_view name) const;
    /// None where the study does not tell where the ground is in that state.
    const GroundState* ground_in(std::string_view state) const;
};

} // namespace glim
