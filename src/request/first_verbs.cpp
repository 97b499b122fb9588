#include "request/verbs.h"

namespace toft::request {

std::vector<Taken> job_and(std::vector<Taken> more) {
    std::vector<Taken> all{{"job", "object", true, "a toft-job/1 document"}};
    all.insert(all.end(), more.begin(), more.end());
    all.push_back({"prices", "string", false, "a price book of one's own, as a table of text"});
    all.push_back({"prices_name", "string", false, "the name that book goes by"});
    return all;
}

const std::vector<Verb>& first_verbs() {
    static const std::vector<Verb> all = {about_verb(), check_verb(), first_verb()};
    return all;
}

}  // namespace toft::request
