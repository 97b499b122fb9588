#include "client/choice_words.h"

#include "base/text.h"
#include "paper/plain_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::paper {

namespace {

using answer::SchemeAnswer;

double pence(double pounds) { return std::round(100 * pounds); }

}  // namespace

std::string joined_lines(const ChoiceLines& lines, bool dashes) {
    std::string text;
    for (const std::string& line : lines) {
        text +=
            (text.empty() ? "" : "\n") + std::string(dashes && lines.size() > 1 ? "– " : "") + line;
    }
    return text;
}

ChoiceLines capitals(ChoiceLines lines) {
    for (std::string& line : lines) line = capital(line);
    return lines;
}

std::string percent_left(double share) {
    if (share < 0) return "none, as things stand";
    return std::isfinite(share) ? fixed(100 * share, 0) + " %" : "all";
}

ChoiceLines told_lines(const SchemeAnswer& scheme) {
    ChoiceLines lines;
    for (const answer::TellAnswer& one : scheme.tell) {
        lines.push_back(fmt::format("{} the work, {}: {}", capital(one.when), one.who, one.why));
    }
    return lines;
}

Shared shared_lines(const std::vector<ChoiceLines>& lists) {
    Shared shared;
    const auto in = [](const ChoiceLines& list, const std::string& line) {
        return std::find(list.begin(), list.end(), line) != list.end();
    };
    shared.own.resize(lists.size());
    for (std::size_t i = 0; i < lists.size(); ++i) {
        for (const std::string& line : lists[i]) {
            const bool everywhere =
                std::all_of(lists.begin(), lists.end(),
                            [&](const ChoiceLines& list) { return in(list, line); });
            ChoiceLines& into = everywhere ? shared.common : shared.own[i];
            if (!in(into, line)) into.push_back(line);
        }
    }
    return shared;
}

std::string difference_words(const Subject& s, const std::vector<Choice>& choices,
                             std::size_t which) {
    const SchemeAnswer& a = s.answer.schemes[choices.front().scheme];
    const SchemeAnswer& b = s.answer.schemes[choices[which].scheme];
    const double more = pence(b.price.total) - pence(a.price.total);
    std::string text = fmt::format("Choice {} ", which + 1);
    if (more == 0) {
        text += "costs the same as choice 1";
    } else {
        text += fmt::format("costs {} {} than choice 1", pence_words(std::fabs(more) / 100),
                            more > 0 ? "more" : "less");
    }
    ChoiceLines differ;
    for (const std::string& id : earthed_differently(a, b)) differ.push_back(building_name(s, id));
    if (!differ.empty() && a.further.empty()) {
        text += "; it is earthed in another way";
    } else if (!differ.empty()) {
        text += fmt::format("; {} {} earthed in another way", listed(differ),
                            differ.size() == 1 ? "is" : "are");
    }
    if (b.dependability != a.dependability) {
        text += fmt::format("; its path to earth is {} dependable",
                            b.dependability > a.dependability ? "more" : "less");
    }
    const std::string here = percent_left(b.headroom);
    const std::string there = percent_left(a.headroom);
    text += here == there
                ? "; both have the same room left, " + here
                : fmt::format("; {} of its tightest limit is left, against {}", here, there);
    if (!b.conditional_on.empty()) text += "; and it is not yet known to be safe";
    return text + ".";
}

bool loss_matters(const Subject& s, const std::vector<Choice>& choices) {
    if (choices.empty()) return false;
    const SchemeAnswer& first = s.answer.schemes[choices.front().scheme];
    const double share = s.catalogue.levers.worth.small_cost.value / 100;
    for (const Choice& choice : choices) {
        const SchemeAnswer& one = s.answer.schemes[choice.scheme];
        if (one.over_years.lost >= share * one.price.total) return true;
        if (one.over_years.total < first.over_years.total) return true;
    }
    return false;
}

bool prices_invented(const answer::Answer& answer) {
    return std::any_of(answer.cautions.begin(), answer.cautions.end(), [](const std::string& line) {
        return line.find("invented") != std::string::npos;
    });
}

}  // namespace toft::paper
