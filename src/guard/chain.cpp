#include "guard/chain.h"

#include "base/limit.h"

namespace toft::guard {

using site::Answer;
using site::RcdType;

namespace {

void add(Chain& chain, const Rcd& rcd) { chain.rcd[chain.count++] = rcd; }

/// A chain fed from the house's board starts with what stands in front of its ways.
void add_house(const View& view, Amperes behind_rcd, Chain& chain) {
    const site::HouseBoard& board = view.job->intake.board;
    Rcd rcd;
    rcd.post = Post::house;
    rcd.sensitivity = behind_rcd;
    rcd.delayed = board.rcd_delayed == Answer::yes;
    rcd.delay_known = board.rcd_delayed != Answer::unknown;
    rcd.there_known = board.behind_rcd.known && board.behind_rcd.low > amperes(0);
    rcd.type = board.rcd_type;
    add(chain, rcd);
}

void add_before(const study::HeadResidual& before, Chain& chain) {
    Rcd rcd;
    rcd.post = Post::before;
    rcd.sensitivity = before.sensitivity;
    rcd.delayed = before.delayed;
    add(chain, rcd);
}

const char* pair_words(const Pair& pair) {
    if (pair.time && pair.current) return "the one further out is sure to act first";
    if (pair.time) return "delayed, but its rating is less than three times the other's";
    if (!pair.upstream.delay_known) {
        return "nobody said whether it is delayed: either may act, or both";
    }
    if (pair.upstream.delayed) return "both are delayed: either may act, or both";
    return "not delayed: either may act, or both";
}

}  // namespace

const char* post_words(Post post) {
    switch (post) {
        case Post::house:
            return "the RCD of the house's board";
        case Post::before:
            return "the RCD at the head of a run before";
        case Post::head:
            return "the RCD at the head of the run";
        case Post::circuit:
            return "the circuit's own breaker";
    }
    return "";
}

Chain chain_of(const View& view, const study::RunScheme& scheme, Amperes behind_rcd) {
    Chain chain;
    if (!view.at_house) {
        if (view.before) add_before(*view.before, chain);
    } else if (scheme.fed_from == site::FedFrom::spare_way && behind_rcd > amperes(0)) {
        add_house(view, behind_rcd, chain);
    }
    if (const auto head = study::residual_at_head(scheme)) {
        Rcd rcd;
        rcd.post = Post::head;
        rcd.sensitivity = head->sensitivity;
        rcd.delayed = head->delayed;
        add(chain, rcd);
    }
    Rcd own;
    own.sensitivity = circuit_sensitivity(view);
    add(chain, own);
    return chain;
}

bool in_time(const Rcd& upstream, const Rcd& downstream) {
    return upstream.delayed && !downstream.delayed;
}

bool in_current(const View& view, const Rcd& upstream, const Rcd& downstream) {
    return within(downstream.sensitivity.number() * view.limits().residual_ratio.value,
                  upstream.sensitivity.number());
}

bool one_takes_all(const View& view, const Chain& chain) {
    for (std::size_t i = 0; i + 1 < chain.count; ++i) {
        if (!selective(view, chain.rcd[i], chain.rcd[chain.count - 1])) return true;
    }
    return false;
}

std::vector<Pair> pairs_of(const View& view, const Chain& chain) {
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i + 1 < chain.count; ++i) {
        for (std::size_t j = i + 1; j < chain.count; ++j) {
            Pair pair{chain.rcd[i], chain.rcd[j], in_time(chain.rcd[i], chain.rcd[j]),
                      in_current(view, chain.rcd[i], chain.rcd[j]), ""};
            pair.says = pair_words(pair);
            pairs.push_back(pair);
        }
    }
    return pairs;
}

namespace {

/// The device at the head, or the house's, clears a fault in front of the circuits' own breakers.
const Rcd* first_to_clear(const View& view, const Chain& chain, Ohms ra_most) {
    for (std::size_t i = 0; i + 1 < chain.count; ++i) {
        const Rcd& rcd = chain.rcd[i];
        const Volts rise = ra_most * rcd.sensitivity;
        if (rcd.there_known && within(rise.number(), view.limits().touch_voltage.value.number())) {
            return &rcd;
        }
    }
    return nullptr;
}

}  // namespace

std::vector<Remark> remarks_of(const View& view, const Chain& chain, Ohms ra_most) {
    std::vector<Remark> remarks;
    if (!view.through_ground()) return remarks;
    const bool cleared = first_to_clear(view, chain, ra_most) != nullptr;
    if (view.on_tt()) {
        const bool apart = !one_takes_all(view, chain);
        const char* says =
            !cleared ? "nothing in front of the run is sure to clear an earth fault on it: on TT a "
                       "delayed 100 mA RCD belongs at the house"
            : apart  ? "the RCD in front of the run clears a fault on it and leaves faults in the "
                       "building to the circuits' own"
                     : "the RCD in front of the run clears a fault on it, but may take the whole "
                       "building with one circuit's fault";
        remarks.push_back(
            {tables::find_footing(view.tables(), "tt-origin"), says, cleared && apart});
    }
    remarks.push_back(
        {tables::find_footing(view.tables(), "tt-incomer"),
         cleared
             ? "between the cable's end and the circuits' breakers an earth fault is left to the "
               "RCD in front of the run: keep that part doubly insulated all the same"
             : "between the cable's end and the circuits' breakers no RCD sees an earth fault: "
               "that part must be doubly insulated, in a board of insulating material, or an RCD "
               "stands at the incomer",
         cleared});
    return remarks;
}

}  // namespace toft::guard
