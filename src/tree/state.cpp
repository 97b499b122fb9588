#include "tree/state.h"

namespace toft::tree {

namespace {

using study::Incoming;

double negative_square(Ohms z) { return -z.number() * z.number(); }

Ohms between(Ohms from, Ohms to, double share) {
    return ohms(from.number() + (to.number() - from.number()) * share);
}

/// Share of the way between two squares.
Ohms between_squares(Ohms from, Ohms to, double share) {
    const double a = from.number() * from.number();
    const double b = to.number() * to.number();
    return ohms(root(a + (b - a) * share));
}

}  // namespace

Figures figures_of(const Incoming& in) {
    return {in.drop,
            in.ze_working.number(),
            in.ze_hot.number(),
            in.zn_working.number(),
            in.zn_hot.number(),
            negative_square(in.ze_least),
            negative_square(in.zn_least)};
}

Incoming moved(const Incoming& from, const Incoming& to, Axis axis, double share) {
    Incoming in = from;
    switch (axis) {
        case Axis::drop:
            in.drop = from.drop + (to.drop - from.drop) * share;
            break;
        case Axis::ze_working:
            in.ze_working = between(from.ze_working, to.ze_working, share);
            break;
        case Axis::ze_hot:
            in.ze_hot = between(from.ze_hot, to.ze_hot, share);
            break;
        case Axis::zn_working:
            in.zn_working = between(from.zn_working, to.zn_working, share);
            in.runs = between(from.runs, to.runs, share);
            break;
        case Axis::zn_hot:
            in.zn_hot = between(from.zn_hot, to.zn_hot, share);
            in.zl_hot = between(from.zl_hot, to.zl_hot, share);
            break;
        case Axis::ze_least:
            in.ze_least = between_squares(from.ze_least, to.ze_least, share);
            break;
        case Axis::zn_least:
            in.zn_least = between_squares(from.zn_least, to.zn_least, share);
            in.zl_least = between_squares(from.zl_least, to.zl_least, share);
            break;
    }
    return in;
}

}  // namespace toft::tree
