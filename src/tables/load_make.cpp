#include "tables/sheet.h"

#include <fmt/format.h>

namespace toft::tables {

namespace {

class MakeReader {
public:
    MakeReader(EmbeddedFiles files, Catalogue& catalogue, Faults& faults)
        : files_(files), catalogue_(catalogue), faults_(faults) {}

    void read() {
        makes();
        methods();
        heats();
        ambients();
        for (std::size_t i = 0; i < families; ++i) check(static_cast<Family>(i));
    }

private:
    Sheet open(const char* name) { return {files_, name, catalogue_.citations, faults_}; }

    Make& make(Family family) { return catalogue_.makes[static_cast<std::size_t>(family)]; }

    void missing(const char* file, Family family, const std::string& what) {
        faults_.push_back(
            {"data", file, fmt::format("{} has no {}", family_word(family), what), "", {}});
    }

    std::optional<Family> family(Sheet& sheet, std::size_t row) {
        const auto found = family_of(sheet.word(row, "family"));
        if (!found) sheet.fault(row, fmt::format("{} is no family", sheet.word(row, "family")));
        return found;
    }

    /// The word in `column` by `meaning`; a word without one is a fault.
    template <class E>
    std::optional<E> meant(Sheet& sheet, std::size_t row, const char* column,
                           std::optional<E> (*meaning)(const std::string&)) {
        const std::string word = sheet.word(row, column);
        const auto found = meaning(word);
        if (!found) sheet.fault(row, fmt::format("{} is no {}", word, column));
        return found;
    }

    bool yes(Sheet& sheet, std::size_t row, const char* column) {
        const std::string word = sheet.word(row, column);
        if (word != "yes" && word != "no") {
            sheet.fault(row, fmt::format("{} is neither yes nor no in {}", word, column));
        }
        return word == "yes";
    }

    void makes() {
        Sheet sheet = open("cable/family.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const auto which = family(sheet, i);
            const auto metal = meant<Metal>(sheet, i, "metal", metal_of);
            const auto insulation = meant<Insulation>(sheet, i, "insulation", insulation_of);
            if (!which || !metal || !insulation) continue;
            Make& m = make(*which);
            m.family = *which;
            m.listed = sheet.cite(i);
            m.standard = sheet.word(i, "standard");
            m.metal = *metal;
            m.insulation = *insulation;
            m.armoured = yes(sheet, i, "armoured");
            m.insulation_factor = yes(sheet, i, "insulation_factor");
        }
    }

    void methods() {
        Sheet sheet = open("cable/method.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const auto which = family(sheet, i);
            const auto laying = meant<Laying>(sheet, i, "laying", laying_of);
            const auto method = meant<ReferenceMethod>(sheet, i, "method", method_of);
            if (!which || !laying || !method) continue;
            const auto at = static_cast<std::size_t>(*laying);
            make(*which).method[at] = method;
            make(*which).method_from[at] = sheet.cite(i);
        }
    }

    void heats() {
        Sheet sheet = open("cable/fault_k.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const std::string use = sheet.word(i, "use");
            const auto metal = meant<Metal>(sheet, i, "material", metal_of);
            const auto insulation = meant<Insulation>(sheet, i, "insulation", insulation_of);
            if (use == "separate" || !metal || !insulation) continue;
            if (use != "live" && use != "core" && use != "armour") {
                sheet.fault(i, fmt::format("{} is no use", use));
                continue;
            }
            const FaultHeat heat = heat_in(sheet, i);
            for (Make& m : catalogue_.makes) {
                const bool steel = use == "armour";
                if (m.insulation != *insulation || (steel && !m.armoured)) continue;
                if (*metal != (steel ? Metal::steel : m.metal)) continue;
                (steel ? m.armour : use == "live" ? m.live : m.core) = heat;
            }
        }
    }

    void ambients() {
        Sheet sheet = open("cable/factor_ambient.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const std::string place = sheet.word(i, "place");
            const auto insulation = meant<Insulation>(sheet, i, "insulation", insulation_of);
            if (place != "air" && place != "ground") {
                sheet.fault(i, fmt::format("{} is no place", place));
                continue;
            }
            for (Make& m : catalogue_.makes) {
                if (!insulation || m.insulation != *insulation) continue;
                sheet.points(place == "air" ? m.ambient_air : m.ambient_ground, i, "temperature_c",
                             "factor");
            }
        }
        for (Make& m : catalogue_.makes) {
            sort_points(m.ambient_air);
            sort_points(m.ambient_ground);
        }
    }

    void check(Family family) {
        const Make& m = make(family);
        if (!m.listed) return missing("cable/family.csv", family, "row");
        const char* const heat = "cable/fault_k.csv";
        if (!m.live.k.citation) missing(heat, family, "k of a live core");
        if (!m.core.k.citation) missing(heat, family, "k of a protective core");
        if (m.armoured && !m.armour.k.citation) missing(heat, family, "k of the armour");
        const char* const ambient = "cable/factor_ambient.csv";
        if (m.ambient_air.empty()) missing(ambient, family, "factors for air");
        if (m.ambient_ground.empty()) missing(ambient, family, "factors for ground");
        for (const auto& method : m.method) {
            if (method) return;
        }
        missing("cable/method.csv", family, "laying");
    }

    EmbeddedFiles files_;
    Catalogue& catalogue_;
    Faults& faults_;
};

}  // namespace

void read_makes(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    MakeReader(files, catalogue, faults).read();
}

}  // namespace toft::tables
