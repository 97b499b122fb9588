#include "request/body.h"
#include "request/verbs.h"

namespace toft::request {

namespace {

std::string check(Bench& bench, std::string_view text, const Asked&) {
    Body body(text);
    return body.work(bench) ? "{}\n" : body.faults_text();
}

}  // namespace

Verb check_verb() {
    return {"check", "what is wrong with a job, or {}", "", "", false, job_and({}), check};
}

}  // namespace toft::request
