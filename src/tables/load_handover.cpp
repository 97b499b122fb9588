#include "tables/sheet.h"

namespace toft::tables {

namespace {

void read_tests(EmbeddedFiles files, Catalogue& c, Faults& faults) {
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
            from.share("duct fill"),
            from.length("core cover"),
            from.number("core air", "ratio"),
            from.length("position doubt", "m")};
}

void read_trench(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    c.trench.sizes = read_trench_sizes(files, c, faults);
    Sheet ducts(files, "trench/duct.csv", c.citations, faults);
    for (std::size_t i = 0; i < ducts.rows(); ++i) {
        const DuctSize duct{millimetres(ducts.number(i, "outer_mm")),
                            millimetres(ducts.number(i, "bore_mm")), ducts.cite(i)};
        if (!(duct.bore < duct.outer)) ducts.fault(i, "a bore as wide as its duct");
        if (i > 0 && !(c.trench.ducts.back().bore < duct.bore)) {
            ducts.fault(i, "ducts are listed from the smallest");
        }
        c.trench.ducts.push_back(duct);
    }
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

void read_handover(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    read_tests(files, c, faults);
    read_trench(files, c, faults);
}

}  // namespace toft::tables
