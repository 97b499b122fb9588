#include "cable/rating.h"

namespace toft::cable {

namespace {

using tables::CableConstants;

const std::vector<TablePoint>& grouping(const CableConstants& c, Laying laying) {
    switch (laying) {
        case Laying::tray:
            return c.grouped_tray;
        case Laying::direct:
            return c.grouped_direct;
        case Laying::duct:
            return c.grouped_duct;
        default:
            return c.grouped_clipped;
    }
}

/// A factor that does not apply here is 1 and needs no source.
template <class L>
ValueIn<L, double> one(L& ledger, const Name& name) {
    return ledger.stated(name, 1.0, "does not apply to this leg");
}

template <class L>
ValueIn<L, double> read(L& ledger, const ReadingNames& names, const std::vector<TablePoint>& points,
                        double x) {
    return read_between(ledger, names, points.data(), points.size(), x);
}

template <class L>
ValueIn<L, double> insulation_factor(L& ledger, const CableConstants& c, const Surroundings& at) {
    const Name result{"Ci", "factor for thermal insulation", at.leg, "", "523.9"};
    const double length = at.in_insulation.number() * 1000;
    if (at.laying != Laying::insulated || length <= 0) return one(ledger, result);
    const Name below{"Ci.below", "factor of the shorter tabulated length", at.leg};
    const Name above{"Ci.above", "factor of the longer tabulated length", at.leg};
    return read(ledger, {below, above, result}, c.insulation, length);
}

}  // namespace

tables::ReferenceMethod reference_method(Laying laying) {
    if (in_ground(laying)) return tables::ReferenceMethod::d;
    return laying == Laying::tray ? tables::ReferenceMethod::e : tables::ReferenceMethod::c;
}

template <class L>
LegFactors<L> leg_factors(L& ledger, const CableConstants& c, const Cited<double>& buried_cc,
                          const Surroundings& at) {
    const bool ground = in_ground(at.laying);
    const bool duct = at.laying == Laying::duct;
    const int leg = at.leg;
    LegFactors<L> f;
    f.method = reference_method(at.laying);
    f.ca = read(ledger,
                {{"Ca.below", "factor of the lower tabulated temperature", leg},
                 {"Ca.above", "factor of the higher tabulated temperature", leg},
                 {"Ca", "factor for the temperature of air or ground", leg, "", "Appendix 4, 5"}},
                ground ? c.ambient_ground : c.ambient_air, at.temperature.number());
    f.cg = read(ledger,
                {{"Cg.below", "factor of the smaller tabulated group", leg},
                 {"Cg.above", "factor of the larger tabulated group", leg},
                 {"Cg", "factor for grouping", leg, "", "Appendix 4, 5"}},
                grouping(c, at.laying), at.circuits);
    f.ci = insulation_factor(ledger, c, at);
    const Name cs{"Cs", "factor for the thermal resistivity of the soil", leg, "", "Appendix 4, 5"};
    const Name cd{"Cd", "factor for the depth of laying", leg, "", "Appendix 4, 5"};
    const Name cc{"Cc", "factor for cable in the ground", leg, "", "Appendix 4, 5.1.1"};
    if (ground) {
        f.cs = read(ledger,
                    {{"Cs.below", "factor of the lower tabulated resistivity", leg},
                     {"Cs.above", "factor of the higher tabulated resistivity", leg},
                     cs},
                    duct ? c.soil_duct : c.soil_direct, at.thermal_resistivity);
        f.cd = read(ledger,
                    {{"Cd.below", "factor of the lesser tabulated depth", leg},
                     {"Cd.above", "factor of the greater tabulated depth", leg},
                     cd},
                    duct ? c.depth_duct : c.depth_direct, at.depth.number());
        f.cc = ledger.table(cc, buried_cc);
    } else {
        f.cs = one(ledger, cs);
        f.cd = one(ledger, cd);
        f.cc = one(ledger, cc);
    }
    f.heat = ledger.let({"F", "factors that act on the temperature together", leg},
                        f.ca * f.cg * f.ci * f.cs * f.cd);
    f.total = ledger.let({"C", "all factors together", leg}, f.heat * f.cc);
    return f;
}

template <class L>
ValueIn<L, Amperes> leg_rating(L& ledger, const tables::Cable& cable, const LegFactors<L>& factors,
                               int leg) {
    const auto it = ledger.table({"It", "tabulated rating", leg},
                                 cable.rating[static_cast<std::size_t>(factors.method)]);
    return ledger.let({"Iz", "rating of the leg", leg, "", "Appendix 4, 5"}, it * factors.total);
}

template LegFactors<Silent> leg_factors(Silent&, const CableConstants&, const Cited<double>&,
                                        const Surroundings&);
template LegFactors<Recording> leg_factors(Recording&, const CableConstants&, const Cited<double>&,
                                           const Surroundings&);
template Amperes leg_rating(Silent&, const tables::Cable&, const LegFactors<Silent>&, int);
template Traced<Amperes> leg_rating(Recording&, const tables::Cable&, const LegFactors<Recording>&,
                                    int);

}  // namespace toft::cable
