#include "existing/existing_cable.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo existing_cable_rule{
    .name = "existing-cable",
    .title = "a cable that stays is undamaged and its insulation reads enough",
    .clause = "134.1.1, 643.3.2, Table 64",
    .unit = "MΩ",
    .reads = "how the cable that is there was found, and what its insulation reads",
};

namespace {

/// Colours of before the change.
constexpr const char* old_colours = "red and black";

constexpr const char* look_for_it =
    "the cable that is there stays, but its insulation reads so little that a fault may be on its "
    "way: look for it, test again, and expect to replace it";

const char* words_of_care(const site::Existing& facts) {
    return facts.colours == old_colours
               ? "the cable that is there stays: test it again before it is relied on; joints in "
                 "the ground cannot be seen; its cores are red and black: mark both ends, and say "
                 "at the boards that two colours meet"
               : "the cable that is there stays: test it again before it is relied on; joints in "
                 "the ground cannot be seen";
}

}  // namespace

template <class L>
Finding<L> existing_cable(L& ledger, const Case<L>& c) {
    if (!c.scheme.first().old()) {
        Finding<L> f =
            plain_finding<L>(existing_cable_rule, Verdict::meets, "no cable that is there stays");
        f.concerns = false;
        return f;
    }
    const auto& there = c.setting.existing;
    const auto mega = [&](const char* symbol, const char* meaning, const auto& r) {
        return ledger.let({symbol, meaning, 0, "MΩ"}, r / 1e6);
    };
    Finding<L> f =
        reaches(ledger, existing_cable_rule,
                mega("R.ins.M", "insulation of the cable there", there.insulation),
                mega("R.ins.min", "least insulation of a circuit",
                     ledger.table({"R.ins.table", "least insulation of a circuit, in ohms"},
                                  c.setting.catalogue->limits.insulation_least)));
    if (!there.sound) {
        f.verdict = Verdict::fails;
        f.says = there.damaged
                     ? "the cable that is there is damaged: it may not stay in use"
                     : "nobody has said that the cable that is there is sound: look at it first";
    } else if (f.verdict == Verdict::fails) {
        f.says =
            "the insulation of the cable that is there reads too little, or was not read: it may "
            "not stay in use as it is";
    } else {
        f.verdict = Verdict::caution;
        const bool low =
            plain(there.insulation) < c.setting.catalogue->limits.insulation_look.value;
        f.says = low ? look_for_it : words_of_care(*c.setting.run->existing);
    }
    return f;
}

template Finding<Silent> existing_cable(Silent&, const Case<Silent>&);
template Finding<Recording> existing_cable(Recording&, const Case<Recording>&);

}  // namespace toft::rules
