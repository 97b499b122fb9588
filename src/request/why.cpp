#include "answer/why.h"

#include "codec/why.h"
#include "request/body.h"
#include "request/verbs.h"

namespace toft::request {

namespace {

std::string why(Bench& bench, std::string_view text, const Asked&) {
    Body body(text);
    const auto work = body.work(bench);
    if (!work) return body.faults_text();
    const answer::Question question = work->question();
    return codec::write_why(work->job.title, work->job.runs.size() == 1
                                                 ? answer::walks_of(question.catalogue, work->job)
                                                 : answer::design(question).walks);
}

}  // namespace

Verb why_verb() {
    return {"why",        "how each building should be earthed, argued step by step",
            "toft-why/1", "",
            false,        job_and({}),
            why};
}

}  // namespace toft::request
