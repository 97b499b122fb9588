#include "paper/run_sheet.h"

#include "joins/terminals.h"
#include "parts/words.h"

namespace toft::paper {

RunSheet run_sheet(const Subject& subject, const answer::SchemeAnswer& part) {
    auto job = std::make_shared<const site::Job>(answer::seen_from(subject.job, part.run.id));
    picture::Stage stage = picture::set_stage(*job, &part);
    return {subject, part, std::move(job), std::move(stage)};
}

std::string near_words(const RunSheet& sheet) { return joins::near_name(sheet.stage); }

std::string far_words(const RunSheet& sheet) {
    return parts::name_or(sheet.building().name, sheet.building().id);
}

std::string fact_words(const answer::Answer& answer, const std::string& pointer) {
    for (const answer::UnknownAnswer& unknown : answer.unknowns) {
        if (unknown.fact != pointer) continue;
        return unknown.question.empty() ? unknown.says : unknown.says + ": " + unknown.question;
    }
    return pointer;
}

}  // namespace toft::paper
