#pragma once

#include "drawing/figure.h"
#include "judgement/findings.h"
#include "machine/workers.h"
#include "visibility/body_picture.h"
#include "visibility/lit_picture.h"

namespace glim {

/// What is seen and hidden of a lamp from one direction, as an eye's view tells it.
struct ViewedAreas {
    Area bare;              ///< with nothing in the way
    Area visible;           ///< the best figure known
    Area hidden;            ///< by things not approved with the lamp
    Area own;               ///< by the lamp itself and by what was approved with it
    bool exact = false;     ///< `visible` is
    bool from_look = false; ///< the very figures of the findings; else looked at for the picture
};

/// One lamp (or those that answer together), made ready to be pictured from wherever an eye may
/// stand: what of the lit face is seen, what hides the rest.
class EyeView {
public:
    /// `study`, `scene` and `look` outlive the view; the scene stays unchanged.
    EyeView(const Study& study, const PreparedScene& scene, const LampLook& look);
    ~EyeView();

    ViewedAreas areas(const Bearing& toward) const;
    /// 400 by 250 points: 800 by 500 pixels at two a point. The same for any number of threads.
    /// Throws Stopped.
    Figure toward(const Bearing& toward, const Workers& workers) const;

private:
    struct Lamp;
    /// Places in `obstacles_` of what takes lit area and was not approved with the lamp, the
    /// largest first.
    std::vector<std::size_t> hiders_toward(const Direction& toward) const;
    std::size_t part_of(const Standing& standing) const; ///< its place in `obstacles_`
    PictureFrame frame_toward(const Direction& toward) const;

    Raster painted_toward(const BodyPicture& bodies, const LitPicture& lit,
                          const std::vector<std::size_t>& hiders, const Workers& workers) const;

    const Study& study_;
    const PreparedScene& scene_;
    const LampLook& look_;
    std::vector<Standing> obstacles_; ///< of all lamps, each once
    std::vector<Lamp> lamps_;
};

} // namespace glim
