#include "answer/as_recommended.h"

#include "site/built.h"
#include "site/built_words.h"
#include "tree/feeding.h"

#include <fmt/format.h>

namespace toft::answer {

site::Job as_recommended(const Question& q) {
    if (q.job.runs.size() == 1) return q.job;
    if (!site::has_choice(q.job)) return site::as_built(q.job);
    const tree::Feedings found =
        tree::feedings({q.catalogue, q.book, q.job, {}, q.memo}, tree::Asked{});
    if (!found.ways.empty()) return found.ways.front().job;
    return site::as_built(q.job, tree::all_trees(q.job, 1).front());
}

std::string feeding_taken(const site::Job& stated, const site::Job& built) {
    if (!site::has_choice(stated)) return "";
    return fmt::format(
        "which building feeds which is taken as recommended: {}; another choice may change what "
        "matters (toft design says what it would cost)",
        site::fed_words(built));
}

}  // namespace toft::answer
