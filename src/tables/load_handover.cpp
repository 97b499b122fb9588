#include "tables/sheet.h"

#include <algorithm>
#include <iterator>

namespace toft::tables {

namespace {

std::string situation_in(Sheet& sheet, std::size_t row) {
    std::string when = sheet.word(row, "when");
    if (std::find(std::begin(situations), std::end(situations), when) == std::end(situations)) {
        sheet.fault(row, "no such situation: " + when);
    }
    return when;
}

/// Parted by semicolons; "-" for none.
std::vector<std::string> names_in(const std::string& cell) {
    std::vector<std::string> names;
    if (cell == "-") return names;
    for (std::size_t at = 0; at <= cell.size();) {
        const std::size_t end = std::min(cell.find(';', at), cell.size());
        names.push_back(cell.substr(at, end - at));
        at = end + 1;
    }
    return names;
}

void read_labels(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "label/label.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        c.handover.labels.push_back({sheet.word(i, "key"), situation_in(sheet, i),
                                     sheet.word(i, "at"), sheet.word(i, "style"),
                                     sheet.number(i, "width_mm"), sheet.word(i, "big"),
                                     sheet.word(i, "small"), names_in(sheet.word(i, "fields")),
                                     sheet.word(i, "clause"), sheet.cite(i)});
    }
}

void read_client(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet notices(files, "client/notice.csv", c.citations, faults);
    for (std::size_t i = 0; i < notices.rows(); ++i) {
        c.handover.notices.push_back({notices.word(i, "list"), situation_in(notices, i),
                                      notices.word(i, "says"), notices.cite(i)});
    }
    Sheet words(files, "client/word.csv", c.citations, faults);
    for (std::size_t i = 0; i < words.rows(); ++i) {
        c.handover.words.push_back({words.word(i, "word"), words.word(i, "means"), words.cite(i)});
    }
    Sheet terms(files, "client/term.csv", c.citations, faults);
    const auto take = [&](const char* key, Cited<double>& into) {
        for (std::size_t i = 0; i < terms.rows(); ++i) {
            if (terms.word(i, "key") == key) into = terms.figure(i, "value");
        }
        if (!into.citation) {
            faults.push_back({"data", "client/term.csv", std::string("no row ") + key, "", {}});
        }
    };
    ClientTerms& t = c.handover.terms;
    take("offer.days", t.offer_days);
    take("choice.dearer", t.choice_dearer);
    take("test.months", t.test_months);
    take("big.letters", t.big_letters);
    take("small.letters", t.small_letters);
    take("voltage.notice", t.voltage_notice);
}

}  // namespace

void read_handover(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    read_labels(files, c, faults);
    read_client(files, c, faults);
    Sheet sheet(files, "test/step.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        const std::string state = sheet.word(i, "state");
        if (state != "dead" && state != "live") sheet.fault(i, "neither dead nor live: " + state);
        c.tests.push_back({sheet.word(i, "key"), state == "dead", sheet.word(i, "what"),
                           sheet.word(i, "how"), sheet.word(i, "clause"), sheet.cite(i)});
        if (c.tests.size() > 1 && c.tests.back().dead && !c.tests[c.tests.size() - 2].dead) {
            sheet.fault(i, "a dead test after a live one");
        }
    }
}

}  // namespace toft::tables
