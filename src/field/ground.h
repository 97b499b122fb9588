#pragma once
// What a bar that leaks one ampere evenly does to another bar or to a point, in two layers of soil:
// Maxwell's images. The surface lets no current through; at the boundary potential and current are
// continuous. The series of images is exact; its end is summed as image_tail.h says. For points the
// error stays below 1e-6 of the value whatever the soil; for bars it is that of
// bar.h for each image: 1e-4 of the nearest, which is more of the value where images cancel.

#include "field/bar.h"
#include "field/image_tail.h"
#include "field/soil.h"

namespace toft::field {

class Ground {
public:
    /// Both resistivities above 0 and within a factor of 10 000, the thickness above 0.
    explicit Ground(const LayeredSoil& soil);

    /// Ohms: mean volts on `a` for one ampere out of `b`. Each bar lies wholly in one layer.
    double between(const Bar& a, const Bar& b) const;

    bool in_upper(const Bar& bar) const { return uniform_ || bar.middle.z <= thickness_; }
    double thickness() const { return thickness_; }

private:
    /// A row of images at depths that grow by twice the thickness: 1/R(2 n h + w) with
    /// w = base + up z(a) + down z(b); `both` adds the same with -w.
    struct Row {
        double up, down, base;
        bool both;
    };

    double row_sum(const Bar& a, const Bar& b, const Row& row) const;
    double mean_tail(const Bar& a, const Bar& b, const Row& row, const ImageTail::From& tail) const;

    double upper_;
    double lower_;
    double thickness_;
    double k_;
    bool uniform_;
    ImageTail tail_;
};

}  // namespace toft::field
