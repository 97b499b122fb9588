#include "request/request.h"

#include "base/nearest.h"
#include "request/body.h"
#include "request/elsewhere.h"

#include <exception>

namespace toft::request {

namespace {

std::string unknown_verb(const std::vector<Verb>& verbs, std::string_view verb) {
    std::vector<std::string> names;
    for (const Verb& one : verbs) names.emplace_back(one.name);
    const std::string asked(verb.substr(0, 40));
    return fault_text("unknown-verb", "", "there is no such verb", nearest_word(asked, names),
                      names);
}

}  // namespace

const Verb* find_verb(const std::vector<Verb>& verbs, std::string_view name) {
    for (const Verb& verb : verbs) {
        if (name == verb.name) return &verb;
    }
    return nullptr;
}

std::string answer(const std::vector<Verb>& verbs, Bench& bench, std::string_view verb,
                   std::string_view body, const Asked& asked) {
    const Verb* found = find_verb(verbs, verb);
    if (!found) return unknown_verb(verbs, verb);
    try {
        return found->work(bench, body, asked);
    } catch (const Elsewhere&) {
        return fault_text("elsewhere", "", "this job is worked out by the whole engine only");
    } catch (const std::exception& error) {
        return fault_text("program", "", error.what());
    } catch (...) {
        return fault_text("program", "", "the program failed");
    }
}

}  // namespace toft::request
