#include "ware/list.h"

#include "base/text.h"
#include "ware/behind.h"
#include "ware/handling.h"
#include "ware/merge.h"
#include "ware/order.h"
#include "ware/pence.h"
#include "ware/unpriced.h"

#include <fmt/format.h>

#include <iterator>

namespace toft::ware {

namespace {

constexpr const char* group_words[groups] = {
    "near end", "run", "ground", "far end", "circuits", "put right first", "other"};

constexpr const char* glands = "gland kit";

/// A pair more of each size and type, which the price has nothing for.
Row spare_of(const Row& gland, double pairs) {
    Row spare = gland;
    spare.what += ", spare";
    spare.quantity = pairs;
    spare.each = spare.amount = std::nullopt;
    spare.lines = 0;
    spare.note = "to have at hand; not in the price";
    return spare;
}

}  // namespace

const char* group_word(Group group) { return group_words[static_cast<std::size_t>(group)]; }

List list_of(const tables::Catalogue& catalogue, const site::Job& job,
             const std::vector<RunBill>& parts) {
    List list;
    std::vector<Draft> drafts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const RunBill part{parts[i].scheme, parts[i].run, parts[i].bill, behind(job, parts, i)};
        std::vector<Draft> more = drafts_of(catalogue, job, part);
        std::move(more.begin(), more.end(), std::back_inserter(drafts));
        more = unpriced_rows(catalogue, part);
        std::move(more.begin(), more.end(), std::back_inserter(drafts));
        for (Handling& one : handling_of(catalogue, part)) list.handling.push_back(std::move(one));
    }
    long long sum = 0;
    for (Draft& draft : merged(std::move(drafts))) {
        draft.row.order = order_words(catalogue.ware, draft);
        if (draft.row.amount) sum += pence(*draft.row.amount);
        const bool gland = draft.row.what.rfind(glands, 0) == 0;
        const double spares = catalogue.ware.spare_pairs.value;
        list.rows.push_back(draft.row);
        if (gland) list.rows.push_back(spare_of(draft.row, spares));
    }
    list.amount = of_pence(sum);
    return list;
}

List list_of(const tables::Catalogue& catalogue, const site::Job& job,
             const answer::SchemeAnswer& scheme) {
    std::vector<const answer::SchemeAnswer*> runs{&scheme};
    for (const answer::SchemeAnswer& further : scheme.further) runs.push_back(&further);
    std::vector<RunBill> parts;
    for (const answer::SchemeAnswer* part : runs) {
        for (const site::Run& run : job.runs) {
            if (run.id == part->run.id) parts.push_back({*part, run, part->bill});
        }
    }
    return list_of(catalogue, job, parts);
}

}  // namespace toft::ware
