#include "store/fact_places.h"

namespace toft::store {

bool leads_somewhere(const std::string& fact, const std::string& job) {
    return fact.size() <= longest_fact && merge::follow(fact, job, job).has_value();
}

long revision_of_fact(Work& work, const JobRecord& job, const std::string& fact, long revision) {
    if (!work.sound()) return 0;
    if (revision == 0) revision = job.current;
    const std::string text =
        revision == job.current ? job.text : text_of(work, job.number, revision);
    const bool pointer = fact.empty() || fact.front() == '/';
    if (work.sound() && pointer && !leads_somewhere(fact, text)) {
        work.fail({"bad-pointer",
                   fact,
                   "the job has no such place: load it again and choose the fact anew",
                   "",
                   {}});
    }
    return revision;
}

FactPlace PlacesNow::place(const std::string& fact, long revision) {
    if (revision == job_.current || fact.substr(0, 1) != "/") return {fact, revision, false};
    auto then = texts_.find(revision);
    if (then == texts_.end()) {
        then = texts_.emplace(revision, text_of(work_, job_.number, revision)).first;
    }
    const auto now = merge::follow(fact, then->second, job_.text);
    return {now.value_or(fact), revision, !now};
}

}  // namespace toft::store
