#include "request/verbs.h"

namespace toft::request {

const std::vector<Verb>& verbs() {
    static const std::vector<Verb> all = {
        about_verb(),  ask_verb(),   check_verb(),   design_verb(), explain_verb(),  first_verb(),
        levers_verb(), paper_verb(), picture_verb(), prices_verb(), readings_verb(), why_verb()};
    return all;
}

std::string answer(Bench& bench, std::string_view verb, std::string_view body, const Asked& asked) {
    return answer(verbs(), bench, verb, body, asked);
}

}  // namespace toft::request
