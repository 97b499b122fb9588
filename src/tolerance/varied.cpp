#include "tolerance/varied.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::tolerance {

namespace {

const char* row_of(Kind kind) {
    switch (kind) {
        case Kind::length:
            return "length";
        case Kind::ze:
            return "ze";
        case Kind::neutral_loop:
            return "neutral loop";
        case Kind::fault_current:
            return "fault current";
        case Kind::electrode:
            return "electrode";
        case Kind::soil:
        case Kind::temperature:
        case Kind::load:
        case Kind::other:
            break;
    }
    return "";
}

std::optional<double> asked_for(Kind kind, const Wish& wish) {
    switch (kind) {
        case Kind::length:
            return wish.length;
        case Kind::ze:
            return wish.ze;
        case Kind::soil:
            return wish.soil;
        case Kind::temperature:
            return wish.temperature;
        case Kind::neutral_loop:
        case Kind::fault_current:
        case Kind::electrode:
        case Kind::load:
        case Kind::other:
            break;
    }
    return std::nullopt;
}

Varied named(const Figure& f) {
    Varied v;
    v.pointer = f.pointer;
    v.says = f.says;
    v.unit = f.unit;
    v.kind = f.kind;
    v.low = f.low;
    v.high = f.high;
    v.likely = (f.low + f.high) / 2;
    v.spread = f.spread;
    v.set = f.set;
    return v;
}

/// A figure stated as one, with what it may be off.
std::optional<Varied> around(const Figure& f, const tables::Catalogue& catalogue,
                             const Wish& wish) {
    // A maximum that somebody declares is not missed in either direction.
    const bool maximum = f.standing == site::Standing::declared && f.kind != Kind::length;
    if (maximum || f.kind == Kind::load) return std::nullopt;
    Varied v = named(f);
    double off = 0;
    if (const auto asked = asked_for(f.kind, wish)) {
        off = f.kind == Kind::temperature ? *asked : f.low * *asked / 100;
        v.word = Word::asked;
    } else if (!wish.as_stated) {
        const tables::ToleranceRow* row = tables::find_tolerance(
            catalogue.tolerances, row_of(f.kind), site::standing_word(f.standing));
        if (!row) return std::nullopt;
        off = f.low * row->per_cent / 100;
        v.word = Word::tables;
        v.spread = row->bell ? site::Spread::bell : site::Spread::even;
        v.citation = row->citation;
    }
    if (!(off > 0)) return std::nullopt;
    v.low = f.low - off;
    v.high = f.high + off;
    return v;
}

std::optional<Varied> loads_together(const Place& place, const Wish& wish) {
    if (!wish.load || !(*wish.load > 0)) return std::nullopt;
    const std::vector<Figure> all = figures_of(place);
    const bool any = std::any_of(all.begin(), all.end(), [](const Figure& f) {
        return f.kind == Kind::load && f.known && f.low == f.high && f.low > 0;
    });
    if (!any) return std::nullopt;
    Varied v;
    const std::string& to = place.job.runs[place.at.run].to;
    v.pointer = fmt::format("/buildings/{}", site::building_index(place.job, to));
    v.says = "all loads together, of what is stated";
    v.unit = "times";
    v.kind = Kind::load;
    v.low = 1 - *wish.load / 100;
    v.likely = 1;
    v.high = 1 + *wish.load / 100;
    v.word = Word::asked;
    v.set = loads_times(place);
    return v;
}

/// A fact that nobody gave, over the rulebook's range.
std::optional<Varied> unstated(const Figure& f, const study::Setting<Silent>& setting) {
    for (const study::OpenFact& fact : setting.open) {
        if (fact.pointer != f.pointer) continue;
        Varied v = named(f);
        v.low = fact.low;
        v.high = fact.high;
        v.likely = (fact.low + fact.high) / 2;
        v.word = Word::rulebook;
        v.citation = fact.citation;
        return v;
    }
    return std::nullopt;
}

}  // namespace

const char* word_of(Word word) {
    switch (word) {
        case Word::survey:
            return "survey";
        case Word::tables:
            return "usual tolerance";
        case Word::asked:
            return "as asked";
        case Word::rulebook:
            break;
    }
    return "rulebook's range";
}

std::vector<Varied> varied_in(const Place& place, const Wish& wish) {
    std::vector<Varied> varied;
    const auto setting = prepared_in(place, place.job);
    for (const Figure& f : figures_of(place)) {
        std::optional<Varied> one;
        if (!f.known) {
            if (wish.open) one = unstated(f, setting);
        } else if (f.low < f.high) {
            one = named(f);
        } else {
            one = around(f, place.catalogue, wish);
        }
        if (one) varied.push_back(std::move(*one));
    }
    if (auto loads = loads_together(place, wish)) varied.push_back(std::move(*loads));
    return varied;
}

site::Job job_at(const site::Job& job, const std::vector<Varied>& varied,
                 const std::vector<double>& values) {
    site::Job at = job;
    for (std::size_t i = 0; i < varied.size(); ++i) varied[i].set(at, values[i], values[i]);
    return at;
}

site::Job job_over(const site::Job& job, const std::vector<Varied>& varied) {
    site::Job over = job;
    for (const Varied& v : varied) v.set(over, v.low, v.high);
    return over;
}

}  // namespace toft::tolerance
