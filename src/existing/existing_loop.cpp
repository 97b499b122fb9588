#include "existing/existing_loop.h"

#include "existing/laid_beside.h"
#include "finding/judge.h"

namespace toft::rules {

const RuleInfo existing_loop_rule{
    .name = "existing-loop",
    .title =
        "the conductors of a cable that stays read what their length gives; beside a second cable, "
        "so nearly that both share the load",
    .clause = "643.2.1, 433.4.1, 433.4.2",
    .unit = "Ω",
    .longer = Trend::either,
    .thicker = Trend::either,
    .reads = "what the conductors of the cable that is there read, the legs' lengths",
};

namespace {

constexpr const char* too_much =
    "the cable that is there reads, or may read, more than its length gives: a joint, a gland or "
    "the armour has gone, or it is another cable; find out which before it is relied on";
constexpr const char* unequal =
    "the cable that is there reads, or may read, so much more than its length gives that a new one "
    "beside it would take more than its share: cables side by side must be equal";
constexpr const char* too_little =
    "the cable that is there reads much less than its length gives: it is shorter or thicker than "
    "stated, or something else is joined; find out which";

}  // namespace

template <class L>
Finding<L> existing_loop(L& ledger, const Case<L>& c) {
    if (!c.scheme.first().old()) {
        Finding<L> f =
            plain_finding<L>(existing_loop_rule, Verdict::meets, "no cable that is there stays");
        f.concerns = false;
        return f;
    }
    const auto& there = c.setting.existing;
    const tables::Limits& limits = c.setting.catalogue->limits;
    const bool beside = c.scheme.first().laid == study::Laid::doubled;
    const auto ratio =
        beside ? existing::reading_of_equals(ledger, limits)
               : ledger.table({"R.over", "most that a reading may be over what is expected"},
                              limits.reading_most);
    Finding<L> f =
        keeps_under(ledger, existing_loop_rule, there.loop,
                    ledger.let({"R1.R2.most", "most that may read"}, there.loop_expected * ratio));
    if (there.live_read) {
        const Finding<L> live = keeps_under(
            ledger, existing_loop_rule, there.live,
            ledger.let({"R1.Rn.most", "most that may read"}, there.live_expected * ratio));
        if (plain(f.use) < plain(live.use)) f = live;
    }
    if (f.verdict == Verdict::fails) {
        f.says = beside ? unequal : too_much;
    } else if (plain(there.loop_least) * plain(ratio) < plain(there.loop_expected)) {
        f.verdict = Verdict::caution;
        f.says = too_little;
    }
    return f;
}

template Finding<Silent> existing_loop(Silent&, const Case<Silent>&);
template Finding<Recording> existing_loop(Recording&, const Case<Recording>&);

}  // namespace toft::rules
