#include "answer/first.h"

#include "answer/describe.h"
#include "answer/design_parts.h"
#include "answer/outline.h"
#include "study/ground_memo.h"

#include <algorithm>

namespace toft::answer {

std::optional<std::size_t> chosen_of(const std::vector<SchemeAnswer>& schemes,
                                     const std::string& key) {
    if (schemes.empty()) return std::nullopt;
    const auto at = std::find_if(schemes.begin(), schemes.end(),
                                 [&](const SchemeAnswer& s) { return s.key == key; });
    return at == schemes.end() ? 0 : static_cast<std::size_t>(at - schemes.begin());
}

namespace {

/// Writes what sets the schemes of one run apart.
class BriefWriter {
public:
    explicit BriefWriter(const price::Book& book)
        : book_(book), low_(price::at_low(book)), high_(price::at_high(book)) {}

    SchemeAnswer write(const search::Contender& c, const study::Setting<Silent>& setting) const {
        SchemeAnswer s;
        s.key = c.key;
        s.scheme = c.scheme;
        s.conditional_on = c.conditional_on;
        study::add_unsaid(setting, s.conditional_on);
        s.headroom = c.headroom;
        s.governed_by = c.governed_by ? c.governed_by->name : "";
        s.dependability = static_cast<int>(c.dependability);
        s.run = outline_of(setting, c.scheme);
        s.building = building_outline(setting, c.scheme);
        s.sentence = sentence_of(s);
        s.words = short_words(s);
        price(c, range_of(c, setting), s.price);
        return s;
    }

    PriceRange range_of(const search::Contender& c, const study::Setting<Silent>& setting) const {
        Silent silent;
        return {price::price_of(silent, low_, setting, c.scheme, c.extras),
                price::price_of(silent, high_, setting, c.scheme, c.extras)};
    }

private:
    void price(const search::Contender& c, const PriceRange& range, PriceAnswer& p) const {
        p.net = c.price.net.number();
        p.vat = c.price.vat.number();
        p.total = c.price.total.number();
        p.net_low = range.low.net.number();
        p.total_low = range.low.total.number();
        p.net_high = range.high.net.number();
        p.total_high = range.high.total.number();
        p.currency = "GBP";
        p.basis = book_.name;
    }

    const price::Book& book_;
    price::Book low_, high_;
};

}  // namespace

FirstAnswer first_of_run(const Question& question, const std::string& key) {
    study::GroundMemo memo;
    Question q = question;
    if (!q.memo) q.memo = &memo;
    FirstAnswer first;
    search::Options options;
    options.memo = q.memo;
    if (q.go_on) options.go_on = [&q] { return q.go_on({}); };
    const Searched searched = answer::searched(q, options, first.answer);
    std::vector<SchemeAnswer>& schemes = first.answer.schemes;
    const BriefWriter brief(q.book);
    for (const search::Contender& contender : searched.found.contenders) {
        schemes.push_back(brief.write(contender, searched.setting_of(contender)));
        schemes.back().rank = static_cast<int>(schemes.size());
    }
    first.chosen = chosen_of(schemes, key);
    if (!first.chosen) return first;
    const search::Contender& contender = searched.found.contenders[*first.chosen];
    const auto& setting = searched.setting_of(contender);
    SchemeAnswer whole = written_bare(q, contender, setting, brief.range_of(contender, setting));
    whole.rank = schemes[*first.chosen].rank;
    schemes[*first.chosen] = std::move(whole);
    mark_least_over_years(searched.found, first.answer);
    return first;
}

}  // namespace toft::answer
