#include "support/judging.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <cmath>
#include <stdexcept>

namespace toft::support {

namespace {

const rules::Rule& rule_named(const std::string& name) {
    const rules::Rule* rule = rules::find_rule(name);
    if (!rule) throw std::runtime_error("there is no rule " + name);
    return *rule;
}

bool same(double a, double b) { return a == b || (std::isnan(a) && std::isnan(b)); }

}  // namespace

rules::Finding<Silent> finding_of(const std::string& name, const site::Job& job,
                                  const study::RunScheme& scheme) {
    const rules::Rule& rule = rule_named(name);
    const auto setting = prepared(job);
    Silent silent;
    study::Figures<Silent> figures;
    study::work_out(silent, setting, scheme, rule.info->needs, figures);
    return rule.judge(silent, rules::Case<Silent>{setting, scheme, figures});
}

bool recorded_alike(const std::string& name, const site::Job& job, const study::RunScheme& scheme) {
    const rules::Rule& rule = rule_named(name);
    Recording ledger;
    const auto setting = study::prepare(ledger, catalogue(), job, 0, study::Corner{});
    study::Figures<Recording> figures;
    study::work_out(ledger, setting, scheme, study::Stage::heat, figures);
    study::work_out(ledger, setting, scheme, study::Stage::circuits, figures);
    const auto place = static_cast<std::size_t>(&rule - rules::rulebook().data());
    const auto& with_working = rules::rulebook_at<Recording>()[place];
    const auto recorded =
        with_working.judge(ledger, rules::Case<Recording>{setting, scheme, figures});
    const auto silent = finding_of(name, job, scheme);
    return recorded.rule == silent.rule && recorded.verdict == silent.verdict &&
           recorded.limited == silent.limited && recorded.at_least == silent.at_least &&
           same(recorded.value, silent.value) && same(recorded.limit, silent.limit) &&
           (!silent.limited || same(recorded.use.value, silent.use)) &&
           std::string(recorded.says) == silent.says &&
           std::string(recorded.remedy) == silent.remedy && recorded.concerns == silent.concerns &&
           recorded.remedies == silent.remedies;
}

search::Evaluation evaluated(const site::Job& job, const study::RunScheme& scheme) {
    search::Evaluation evaluation;
    search::evaluate(prepared(job), scheme, evaluation);
    return evaluation;
}

std::string first_failure(const search::Evaluation& evaluation) {
    for (const auto& finding : evaluation.findings) {
        if (finding.verdict == rules::Verdict::fails) return finding.rule->name;
    }
    return "";
}

}  // namespace toft::support
