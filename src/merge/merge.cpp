#include "merge/merge.h"

#include "merge/facts.h"
#include "merge/same.h"

namespace toft::merge {

namespace {

/// A job's tree, or its faults noted under `side`.
Json read(std::string_view text, const std::string& side, Faults& faults) {
    auto document = codec::parse_document(text);
    if (!document) {
        for (Fault& fault : document.error()) {
            fault.pointer = side + fault.pointer;
            faults.push_back(std::move(fault));
        }
        return {};
    }
    if (!document->is_object()) {
        faults.push_back({"not-a-job", side, "a job is a JSON object: send one", "", {}});
    }
    return *document;
}

}  // namespace

Outcome<Merged> merge(std::string_view base, std::string_view mine, std::string_view theirs) {
    Faults faults;
    const Json before = read(base, "base", faults);
    const Json ours = read(mine, "mine", faults);
    const Json others = read(theirs, "theirs", faults);
    if (!faults.empty()) return failed(std::move(faults));
    Facts facts;
    const auto job = facts.merged({&before, &ours, &others}, {});
    return Merged{job ? job->dump() : "{}", std::move(facts.clashes)};
}

bool same_job(std::string_view a, std::string_view b) {
    if (a == b) return codec::parse_document(a).has_value();
    const auto one = codec::parse_document(a);
    const auto other = codec::parse_document(b);
    return one && other && same(*one, *other);
}

}  // namespace toft::merge
