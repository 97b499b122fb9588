#include "shock/body.h"

#include "base/root.h"

namespace toft::shock {

namespace {

const ReadingNames hand_to_hand{{"Z.below", "body, hand to hand, at the voltage below"},
                                {"Z.above", "body, hand to hand, at the voltage above"},
                                {"Z.T", "body, hand to hand, at the voltage across it"}};

template <class L>
ValueIn<L, double> impedance(L& ledger, const tables::Shock& tables, const Person& person,
                             double across) {
    const auto& points = tables.impedance(person.skin, person.percentile);
    return read_between(ledger, hand_to_hand, points.data(), points.size(), across);
}

/// The volts that the body keeps of `touch` with `series` ohms before it.
double volts_across(const tables::Shock& tables, const Person& person, double share, double series,
                    double touch) {
    Silent ledger;
    return last_holding(0, touch, [&](double across) {
        const double body = share * impedance(ledger, tables, person, across);
        return across * (1 + series / body) <= touch;
    });
}

template <class L>
ValueIn<L, Ohms> series(L& ledger, const tables::Shock& tables, const Footing<L>& footing) {
    const auto factor =
        ledger.table({"f.feet", "ground under two feet, for each ohm metre"}, tables.feet_contact);
    return ledger.let({"R.feet", "footwear and the ground under the feet"},
                      footing.footwear + factor * footing.ground);
}

}  // namespace

template <class L>
BodyCurrent<L> body_current(L& ledger, const tables::Shock& tables, const Person& person,
                            const Footing<L>& footing, const ValueIn<L, Volts>& touch) {
    const auto share = ledger.table({"s.path", "share of hand to hand on this path"},
                                    tables.path_share[static_cast<std::size_t>(person.path)]);
    const bool stands = person.path != tables::BodyPath::hand_to_hand;
    const auto before =
        stands ? series(ledger, tables, footing)
               : ledger.stated({"R.feet", "nothing but the body"}, ohms(0), "hand to hand");
    const double kept =
        volts_across(tables, person, plain(share), plain(before).number(), plain(touch).number());
    const auto whole = impedance(ledger, tables, person, kept);
    const auto body = ledger.let({"Z.body", "body on this path"}, share * whole * ohms(1));
    const auto current =
        ledger.let({"I.body", "current through the body"}, touch / (body + before));
    return {current, ledger.let({"U.body", "volts across the body"}, current * body), body};
}

template <class L>
BodyCurrent<L> body_current(L& ledger, const tables::Shock& tables,
                            const tables::Condition& condition, const ValueIn<L, Volts>& touch) {
    const Footing<L> footing{
        ledger.table({"R.shoes", "footwear, both feet together"}, condition.footwear),
        ledger.table({"rho.ground", "resistivity of the surface"}, condition.ground)};
    const Person person{condition.skin, condition.percentile, condition.path};
    return body_current(ledger, tables, person, footing, touch);
}

template <class L>
ValueIn<L, Amperes> heart_current(L& ledger, const Name& name, const tables::HeartFactor& factor,
                                  const ValueIn<L, Amperes>& current) {
    return ledger.let(name,
                      ledger.table({"F.heart", "heart-current factor"}, factor.factor) * current);
}

template BodyCurrent<Silent> body_current(Silent&, const tables::Shock&, const Person&,
                                          const Footing<Silent>&, const Volts&);
template BodyCurrent<Recording> body_current(Recording&, const tables::Shock&, const Person&,
                                             const Footing<Recording>&, const Traced<Volts>&);
template BodyCurrent<Silent> body_current(Silent&, const tables::Shock&, const tables::Condition&,
                                          const Volts&);
template BodyCurrent<Recording> body_current(Recording&, const tables::Shock&,
                                             const tables::Condition&, const Traced<Volts>&);
template Amperes heart_current(Silent&, const Name&, const tables::HeartFactor&, const Amperes&);
template Traced<Amperes> heart_current(Recording&, const Name&, const tables::HeartFactor&,
                                       const Traced<Amperes>&);

}  // namespace toft::shock
