#include "guard/caution.h"

#include "guard/leakage.h"

namespace toft::guard {

namespace {

constexpr const char* run_before_opens =
    "a fault in the building may trip the RCD at the head of a run before as well: then every "
    "building behind that one goes dark with it";
constexpr const char* blinded =
    "the RCD of the house's board is of a type that what is fed out there can blind: smooth d.c. "
    "would stop it from seeing faults in the house too";
constexpr const char* alternating_only =
    "the RCD of the house's board is of type AC: it may not see the faults of electronics, in the "
    "house or out there";
constexpr const char* sight_not_known =
    "nobody read the type of the RCD of the house's board: what is fed out there may blind it, for "
    "faults in the house too";
constexpr const char* sight_by_detection =
    "the RCD of the house's board is blinded unless the charging point detects 6 mA of smooth d.c. "
    "itself and opens";
constexpr const char* hangs_on_the_house =
    "the run would hang on the house's RCD: a fault out there takes the house's circuits with it, "
    "and either device may act first";
constexpr const char* freezer_hangs =
    "the run would hang on the house's RCD: a fault anywhere behind it takes the freezer and the "
    "house's circuits with it, and nobody may notice";
constexpr const char* run_hangs =
    "the run hangs on the house's RCD: it leaves faults in the building to the building's own, but "
    "a fault on the run takes the house's circuits with it";
constexpr const char* rcbo_takes_all =
    "a fault in the building may trip its own RCD or the RCBO at the house, or both: then "
    "everything out there goes dark and someone walks to the house";
constexpr const char* rcbo_takes_freezer =
    "a fault in the building may trip its own RCD or the RCBO at the house, or both: then the "
    "freezer goes dark with everything else, and nobody may notice";
constexpr const char* head_takes_all =
    "a fault in the building may trip its own RCD or the one at the head of its run, or both: then "
    "everything in it goes dark and someone walks to the board that feeds it";
constexpr const char* head_takes_freezer =
    "a fault in the building may trip its own RCD or the one at the head of its run, or both: then "
    "the freezer goes dark with everything else, and nobody may notice";
constexpr const char* leaks_in_front =
    "what the circuits leak in ordinary use may come to more than 30 % of the rating of an RCD in "
    "front of them: it may open without a fault";
constexpr const char* leaks_in_circuit =
    "a circuit may leak more in ordinary use than 30 % of its 30 mA: it may open without a fault";

class Listing {
public:
    Listing(const View& view, const Chain& chain) : v_(view), chain_(chain) {}

    Cautions all() {
        const Rcd* house = chain_.at(Post::house);
        if (house && house->type) sight(*house);
        order();
        if (house && !house->type) add(sight_not_known);
        leakage();
        return out_;
    }

private:
    void add(const char* words) { out_.says[out_.count++] = words; }

    void sight(const Rcd& house) {
        switch (sight_of(v_, house.type)) {
            case Sight::blinded:
                add(upstream_type(v_) == site::RcdType::a ? alternating_only : blinded);
                break;
            case Sight::only_with_detection:
                add(sight_by_detection);
                break;
            case Sight::not_known:
            case Sight::sees:
                break;
        }
    }

    void order() {
        const Rcd& own = chain_.rcd[chain_.count - 1];
        const bool freezer = has_kind(v_, site::CircuitKind::freezer);
        if (const Rcd* house = chain_.at(Post::house)) {
            const bool apart = selective(v_, *house, own);
            add(apart ? run_hangs : freezer ? freezer_hangs : hangs_on_the_house);
        }
        const Rcd* before = chain_.at(Post::before);
        if (before && !selective(v_, *before, own)) add(run_before_opens);
        const Rcd* head = chain_.at(Post::head);
        if (!head || selective(v_, *head, own)) return;
        if (v_.at_house) {
            add(freezer ? rcbo_takes_freezer : rcbo_takes_all);
        } else {
            add(freezer ? head_takes_freezer : head_takes_all);
        }
    }

    void leakage() {
        const Leakage sum = leakage_of_all(v_);
        for (std::size_t i = 0; i + 1 < chain_.count; ++i) {
            if (budget_of(v_, sum, chain_.rcd[i].sensitivity) == Budget::kept) continue;
            add(leaks_in_front);
            break;
        }
        if (worst_circuit(v_) != Budget::kept) add(leaks_in_circuit);
    }

    const View& v_;
    const Chain& chain_;
    Cautions out_;
};

}  // namespace

Cautions cautions_of(const View& view, const Chain& chain) { return Listing(view, chain).all(); }

}  // namespace toft::guard
