#include "study/circuit_figures.h"

namespace toft::study {

namespace {

template <class L>
ValueIn<L, Ohms> loop_behind(L& ledger, const Setting<L>& s, const char* symbol,
                             const char* meaning, const ValueIn<L, Amperes>& least) {
    return ledger.let({symbol, meaning}, s.supply.c_min * s.supply.u0 / least);
}

}  // namespace

template <class L>
circuit::Feed<L> feed_of(L& ledger, const Setting<L>& s, const RunScheme& scheme,
                         const Figures<L>& f) {
    circuit::Feed<L> feed;
    feed.three_phase = s.phases == 3;
    feed.by_conductor =
        scheme.earthing == BuildingEarthing::supply_earth && s.supply.system != site::Earthing::tt;
    const bool behind = !s.house.at_house;
    feed.u0 = s.supply.u0;
    feed.c_min = s.supply.c_min;
    feed.drop = behind ? ledger.let({"dU.board", "lost up to the board"},
                                    f.drop + s.drop_before / 100.0 * s.supply.u0)
                       : f.drop;
    const auto twice = ledger.let({"n.pair", "line and neutral over what one line's load meets"},
                                  2.0 / (1.0 + s.neutral_share));
    feed.run.r = ledger.let({"R.pair", "resistance of the run, line and neutral"}, f.met.r * twice);
    feed.run.x = ledger.let({"X.pair", "reactance of the run, line and neutral"}, f.met.x * twice);
    if (behind) {
        feed.run.r = ledger.let({"R.way", "resistance of all runs up to there, line and neutral"},
                                feed.run.r + s.supply.runs);
    }
    feed.source = s.supply.zn_origin;
    feed.source_line = s.supply.zl_most;
    const auto& at = f.at[scheme.stretches - 1];
    const typename StretchFaults<L>::Least* least[] = {&at.working, &at.early, &at.hot};
    static constexpr const char* zn[] = {"Zn.board.work", "Zn.board.early", "Zn.board.hot"};
    static constexpr const char* zs[] = {"Zs.board.work", "Zs.board.early", "Zs.board.hot"};
    for (std::size_t h = 0; h < circuit::heats; ++h) {
        feed.zn[h] =
            loop_behind(ledger, s, zn[h], "line-neutral loop at the board", least[h]->neutral);
        feed.zs[h] =
            loop_behind(ledger, s, zs[h], "earth fault loop at the board", least[h]->earth);
    }
    feed.short_most = s.phases == 3 ? f.lll_far : f.ln_far;
    feed.earth_most = f.le_far;
    return feed;
}

template <class L>
void work_out_circuits(L& ledger, const Setting<L>& s, const RunScheme& scheme, Figures<L>& f) {
    const auto& judged = s.circuits.judged;
    f.circuits.resize(judged.size());
    if (judged.empty()) return;
    const circuit::Feed<L> feed = feed_of(ledger, s, scheme, f);
    for (std::size_t i = 0; i < judged.size(); ++i) {
        circuit::design(ledger, *s.catalogue, judged[i], feed, f.circuits[i]);
    }
}

template circuit::Feed<Silent> feed_of(Silent&, const Setting<Silent>&, const RunScheme&,
                                       const Figures<Silent>&);
template circuit::Feed<Recording> feed_of(Recording&, const Setting<Recording>&, const RunScheme&,
                                          const Figures<Recording>&);
template void work_out_circuits(Silent&, const Setting<Silent>&, const RunScheme&,
                                Figures<Silent>&);
template void work_out_circuits(Recording&, const Setting<Recording>&, const RunScheme&,
                                Figures<Recording>&);

}  // namespace toft::study
