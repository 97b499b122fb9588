#include "circuit/laying.h"

namespace toft::circuit {

using site::LegMethod;
using tables::Laying;

Laying laying_of(LegMethod method) {
    switch (method) {
        case LegMethod::clipped:
            return Laying::clipped;
        case LegMethod::tray:
            return Laying::tray;
        case LegMethod::free_air:
            return Laying::free_air;
        case LegMethod::in_conduit:
            return Laying::conduit;
        case LegMethod::in_trunking:
            return Laying::trunking;
        case LegMethod::in_insulation:
            return Laying::insulated;
        case LegMethod::above_ceiling:
            return Laying::above_ceiling;
        case LegMethod::buried_direct:
            return Laying::direct;
        case LegMethod::buried_in_duct:
            return Laying::duct;
        case LegMethod::overhead:
            return Laying::overhead;
    }
    return Laying::clipped;
}

}  // namespace toft::circuit
