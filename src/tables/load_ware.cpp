#include "tables/sheet.h"

#include <algorithm>

namespace toft::tables {

namespace {

constexpr const char* gland_place_words[gland_places] = {"dry", "outdoors", "wet"};

Metres mm(Sheet& s, std::size_t row, std::string_view column) {
    return millimetres(s.number(row, column));
}

SquareMillimetres mm2(Sheet& s, std::size_t row, std::string_view column) {
    return square_millimetres(s.number(row, column));
}

bool yes(Sheet& s, std::size_t row, std::string_view column) {
    return s.word(row, column) == "yes";
}

/// Calls `take` for every row of the file.
template <class Take>
void rows_of(Sheet sheet, Take take) {
    for (std::size_t i = 0; i < sheet.rows(); ++i) take(sheet, i);
}

/// What is bought, by size.
void read_sizes(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Ware& w = c.ware;
    const auto sheet = [&](const char* name) { return Sheet(files, name, c.citations, faults); };
    rows_of(sheet("ware/gland.csv"), [&](Sheet& s, std::size_t i) {
        w.glands.push_back({s.word(i, "size"), mm(s, i, "under_most_mm"), mm(s, i, "over_from_mm"),
                            mm(s, i, "over_to_mm"), s.cite(i)});
    });
    rows_of(sheet("ware/gland_type.csv"), [&](Sheet& s, std::size_t i) {
        const std::string word = s.word(i, "place");
        const auto* const found =
            std::find(std::begin(gland_place_words), std::end(gland_place_words), word);
        if (found == std::end(gland_place_words)) return s.fault(i, "no place of a gland: " + word);
        w.gland_types[static_cast<std::size_t>(found - gland_place_words)] = {
            s.word(i, "type"), s.word(i, "seals"), s.cite(i)};
    });
    rows_of(sheet("ware/duct.csv"), [&](Sheet& s, std::size_t i) {
        w.ducts.push_back({mm(s, i, "outside_mm"), mm(s, i, "bore_mm"), s.cite(i)});
    });
    rows_of(sheet("ware/single.csv"), [&](Sheet& s, std::size_t i) {
        w.singles.push_back({mm2(s, i, "section_mm2"), mm(s, i, "overall_mm"), s.cite(i)});
    });
    rows_of(sheet("ware/sold.csv"), [&](Sheet& s, std::size_t i) {
        w.sold.push_back({s.word(i, "what"), metres(s.number(i, "length_m")), s.cite(i)});
    });
    rows_of(sheet("ware/item.csv"), [&](Sheet& s, std::size_t i) {
        w.items.push_back({s.word(i, "item"), s.word(i, "what"), s.cite(i)});
    });
}

/// What laying and fixing ask of a cable.
void read_laying(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Ware& w = c.ware;
    const auto sheet = [&](const char* name) { return Sheet(files, name, c.citations, faults); };
    rows_of(sheet("ware/support.csv"), [&](Sheet& s, std::size_t i) {
        w.supports.push_back({yes(s, i, "armoured"), mm(s, i, "over_mm"), mm(s, i, "to_mm"),
                              mm(s, i, "level_mm"), mm(s, i, "upright_mm"), s.cite(i)});
    });
    rows_of(sheet("ware/bend.csv"), [&](Sheet& s, std::size_t i) {
        w.bends.push_back({yes(s, i, "armoured"), mm2(s, i, "over_mm2"), mm2(s, i, "to_mm2"),
                           s.number(i, "times"), s.cite(i)});
    });
    rows_of(sheet("ware/build.csv"), [&](Sheet& s, std::size_t i) {
        const auto family = family_of(s.word(i, "family"));
        if (!family) return s.fault(i, "no such family of cable");
        w.builds.push_back({*family, static_cast<int>(s.number(i, "cores")),
                            mm2(s, i, "section_mm2"), mm(s, i, "under_armour_mm"),
                            s.number(i, "mass_kg_per_km") / 1000, s.cite(i)});
    });
}

void read_ware_constants(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    struct Slot {
        const char* key;
        Cited<double> Ware::*into;
        double scale;
    };
    constexpr Slot slots[] = {{"diameter.spread", &Ware::diameter_spread, 0.01},
                              {"duct.fill", &Ware::duct_fill, 0.01},
                              {"duct.ratio", &Ware::duct_ratio, 1},
                              {"duct.bends", &Ware::duct_bends, 1},
                              {"eye.copper", &Ware::eye_copper, 1},
                              {"eye.aluminium", &Ware::eye_aluminium, 1},
                              {"stocking", &Ware::stocking, 1},
                              {"friction.dry", &Ware::friction_dry, 1},
                              {"friction.wet", &Ware::friction_wet, 1},
                              {"spare.pairs", &Ware::spare_pairs, 1}};
    Sheet sheet(files, "ware/constant.csv", c.citations, faults);
    for (const Slot& slot : slots) {
        Cited<double>& into = c.ware.*slot.into;
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            if (sheet.word(i, "key") != slot.key) continue;
            into = sheet.cited(i, sheet.number(i, "value") * slot.scale);
        }
        if (!into.citation) {
            faults.push_back(
                {"data", "ware/constant.csv", std::string("no row ") + slot.key, "", {}});
        }
    }
}

/// Rows of one figure each, by key.
class Figures {
public:
    explicit Figures(Sheet& sheet) : sheet_(sheet) {}

    Cited<double> number(const std::string& key, const std::string& unit, double factor = 1) {
        for (std::size_t i = 0; i < sheet_.rows(); ++i) {
            if (sheet_.word(i, "key") != key) continue;
            if (sheet_.word(i, "unit") != unit) sheet_.fault(i, key + " is stated in " + unit);
            if (sheet_.number(i, "value") <= 0) sheet_.fault(i, key + " is more than nothing");
            return sheet_.cited(i, sheet_.number(i, "value") * factor);
        }
        sheet_.fault(0, "no row " + key);
        return {1, nullptr};
    }
    Cited<double> share(const std::string& key) { return number(key, "%", 0.01); }
    Cited<Metres> length(const std::string& key, const std::string& unit = "mm") {
        const Cited<double> found = number(key, unit, unit == "mm" ? 0.001 : 1);
        return {metres(found.value), found.citation};
    }

private:
    Sheet& sheet_;
};

TrenchSizes read_trench_sizes(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "trench/dimension.csv", c.citations, faults);
    Figures from(sheet);
    return {from.length("width"),
            from.length("bedding below"),
            from.length("bedding above"),
            from.length("tape above"),
            from.length("tape width"),
            from.length("tape covers"),
            from.length("power apart"),
            from.length("data apart"),
            from.length("pipe apart"),
            from.length("side clear"),
            from.share("bulking"),
            from.number("sand density", "kg/m3"),
            from.share("sand waste"),
            from.share("tape waste"),
            from.share("duct waste"),
            from.number("small bag", "kg"),
            from.number("bulk bag", "kg"),
            from.length("data duct"),
            from.length("position doubt", "m")};
}

void read_trench(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    c.trench.sizes = read_trench_sizes(files, c, faults);
    Sheet surfaces(files, "trench/made_good.csv", c.citations, faults);
    for (std::size_t i = 0; i < surfaces.rows(); ++i) {
        c.trench.made_good.push_back({surfaces.word(i, "surface"),
                                      millimetres(surfaces.number(i, "layer_mm")),
                                      surfaces.word(i, "says"), surfaces.cite(i)});
    }
    Sheet photos(files, "trench/photo.csv", c.citations, faults);
    for (std::size_t i = 0; i < photos.rows(); ++i) {
        c.trench.photos.push_back({photos.word(i, "key"), photos.word(i, "says"),
                                   photos.word(i, "when"), photos.cite(i)});
    }
}

}  // namespace

const char* gland_place_word(GlandPlace place) {
    return gland_place_words[static_cast<std::size_t>(place)];
}

void read_ground_and_ware(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    read_sizes(files, c, faults);
    read_laying(files, c, faults);
    read_ware_constants(files, c, faults);
    read_trench(files, c, faults);
}

}  // namespace toft::tables
