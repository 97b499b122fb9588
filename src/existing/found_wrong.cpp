#include "existing/found_wrong.h"

#include "existing/found.h"
#include "finding/judge.h"

namespace toft::rules {

const RuleInfo found_wrong_rule{
    .name = "found-wrong",
    .title = "what was found wrong at what is there is put right first",
    .clause = "132.16, 641.5",
    .reads = "what the survey found wrong at the house, the building and the cable that is there",
};

namespace {

Verdict verdict_of(const tables::FoundRow& row) {
    for (const Verdict v : {Verdict::fails, Verdict::caution}) {
        if (row.verdict == verdict_word(v)) return v;
    }
    return Verdict::meets;
}

}  // namespace

template <class L>
Finding<L> found_wrong(L&, const Case<L>& c) {
    Finding<L> f = plain_finding<L>(found_wrong_rule, Verdict::meets, "nothing was found wrong");
    f.concerns = false;
    const auto found = existing::found_for(c.setting, c.scheme);
    for (const existing::FoundWrong& one : found) {
        const Verdict verdict = verdict_of(*one.row);
        if (f.concerns && !(f.verdict < verdict)) continue;
        f.concerns = true;
        f.verdict = verdict;
        f.says = one.row->first.c_str();
    }
    const auto items = existing::put_right(found);
    for (std::size_t i = 0; i < items.size() && i < most_remedies; ++i) f.remedies[i] = items[i];
    return f;
}

template Finding<Silent> found_wrong(Silent&, const Case<Silent>&);
template Finding<Recording> found_wrong(Recording&, const Case<Recording>&);

}  // namespace toft::rules
