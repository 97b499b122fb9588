#include "cable/rating.h"

namespace toft::cable {

namespace {

using tables::CableConstants;

const std::vector<TablePoint>& grouping(const CableConstants& c, Laying laying) {
    switch (laying) {
        case Laying::tray:
        case Laying::free_air:
            return c.grouped_tray;
        case Laying::conduit:
        case Laying::trunking:
        case Laying::insulated:
        case Laying::above_ceiling:
            return c.grouped_enclosed;
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
ValueIn<L, double> insulation_factor(L& ledger, const FactorTables& tables,
                                     const Surroundings& at) {
    const Name result{"Ci", "factor for thermal insulation", at.leg, "", "523.9"};
    const double length = at.in_insulation.number() * 1000;
    if (at.laying != Laying::insulated || length <= 0 || !tables.make.insulation_factor) {
        return one(ledger, result);
    }
    const Name below{"Ci.below", "factor of the shorter tabulated length", at.leg};
    const Name above{"Ci.above", "factor of the longer tabulated length", at.leg};
    return read(ledger, {below, above, result}, tables.constants.insulation, length);
}

}  // namespace

template <class L>
LegFactors<L> leg_factors(L& ledger, const FactorTables& tables, const Surroundings& at) {
    const CableConstants& c = tables.constants;
    const tables::Make& make = tables.make;
    const bool ground = tables::in_ground(at.laying);
    const bool duct = at.laying == Laying::duct;
    const int leg = at.leg;
    LegFactors<L> f;
    f.method = make.method[static_cast<std::size_t>(at.laying)];
    f.ca = read(ledger,
                {{"Ca.below", "factor of the lower tabulated temperature", leg},
                 {"Ca.above", "factor of the higher tabulated temperature", leg},
                 {"Ca", "factor for the temperature of air or ground", leg, "", "Appendix 4, 5"}},
                ground ? make.ambient_ground : make.ambient_air, at.temperature.number());
    f.cg = read(ledger,
                {{"Cg.below", "factor of the smaller tabulated group", leg},
                 {"Cg.above", "factor of the larger tabulated group", leg},
                 {"Cg", "factor for grouping", leg, "", "Appendix 4, 5"}},
                grouping(c, at.laying), at.circuits);
    f.ci = insulation_factor(ledger, tables, at);
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
        f.cc = ledger.table(cc, tables.buried_cc);
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
ValueIn<L, Amperes> leg_rating(L& ledger, const tables::Duty& duty, const LegFactors<L>& factors,
                               int leg) {
    const Name name{"Iz", "rating of the leg", leg, "", "Appendix 4, 5"};
    const auto* it =
        factors.method ? &duty.rating[static_cast<std::size_t>(*factors.method)] : nullptr;
    if (!it || !it->citation) {
        return ledger.stated(name, amperes(0), "no rating is tabulated for this cable laid so");
    }
    return ledger.let(name, ledger.table({"It", "tabulated rating", leg}, *it) * factors.total);
}

template LegFactors<Silent> leg_factors(Silent&, const FactorTables&, const Surroundings&);
template LegFactors<Recording> leg_factors(Recording&, const FactorTables&, const Surroundings&);
template Amperes leg_rating(Silent&, const tables::Duty&, const LegFactors<Silent>&, int);
template Traced<Amperes> leg_rating(Recording&, const tables::Duty&, const LegFactors<Recording>&,
                                    int);

}  // namespace toft::cable
