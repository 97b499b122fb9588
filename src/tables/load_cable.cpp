#include "tables/sheet.h"

#include "base/order.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

namespace toft::tables {

namespace {

/// Which cables a row of a table is about; what the table has no column for is left open.
struct Which {
    std::optional<Family> family;
    std::optional<Insulation> insulation;
    std::optional<int> cores;
    std::optional<int> loaded;
    SquareMillimetres section;
};

class CableReader {
public:
    CableReader(EmbeddedFiles files, Catalogue& catalogue, Faults& faults)
        : files_(files), catalogue_(catalogue), faults_(faults) {}

    void read() {
        conductors();
        sizes();
        core_resistances();
        reactances();
        armour();
        ratings();
        drops();
        for (const Cable& cable : catalogue_.cables) check(cable);
        for (const Make& make : catalogue_.makes) {
            if (make.listed && !sized(make.family)) {
                fault("cable/size.csv", fmt::format("no size of {}", family_word(make.family)));
            }
        }
    }

private:
    Sheet open(const char* name) { return {files_, name, catalogue_.citations, faults_}; }

    void fault(const char* file, std::string says) {
        faults_.push_back({"data", file, std::move(says), "", {}});
    }

    void conductors() {
        Sheet sheet = open("cable/conductor_resistance.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const auto metal = metal_of(sheet.word(i, "material"));
            if (!metal) {
                sheet.fault(i, fmt::format("{} is no metal", sheet.word(i, "material")));
                continue;
            }
            catalogue_.conductors.push_back(
                {*metal, square_millimetres(sheet.number(i, "section_mm2")),
                 sheet.cited(i, milliohms_per_metre(sheet.number(i, "r20_mohm_per_m")))});
        }
        put_in_order(catalogue_.conductors, [](const Conductor& a, const Conductor& b) {
            return a.metal != b.metal ? a.metal < b.metal : a.section < b.section;
        });
    }

    std::optional<Family> family(Sheet& sheet, std::size_t row) {
        const auto found = family_of(sheet.word(row, "family"));
        if (!found) sheet.fault(row, fmt::format("{} is no family", sheet.word(row, "family")));
        return found;
    }

    void sizes() {
        Sheet sheet = open("cable/size.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const auto which = family(sheet, i);
            if (!which) continue;
            Cable cable;
            cable.family = *which;
            cable.cores = static_cast<int>(sheet.number(i, "cores"));
            cable.section = square_millimetres(sheet.number(i, "section_mm2"));
            cable.cpc = square_millimetres(sheet.number(i, "cpc_mm2"));
            cable.listed = sheet.cite(i);
            catalogue_.cables.push_back(cable);
        }
        put_in_order(catalogue_.cables, [](const Cable& a, const Cable& b) {
            return std::make_tuple(a.family, a.cores, a.section.number()) <
                   std::make_tuple(b.family, b.cores, b.section.number());
        });
    }

    bool sized(Family wanted) const {
        return std::any_of(catalogue_.cables.begin(), catalogue_.cables.end(),
                           [&](const Cable& cable) { return cable.family == wanted; });
    }

    bool meets(const Cable& cable, const Which& which) const {
        return cable.section == which.section && (!which.family || cable.family == *which.family) &&
               (!which.cores || cable.cores == *which.cores) &&
               (!which.loaded || cable.cores >= *which.loaded) &&
               (!which.insulation || make_of(catalogue_, cable).insulation == *which.insulation);
    }

    /// Calls `set(cable)` for every cable the row is about; a row about none is a fault.
    template <class Set>
    void each(Sheet& sheet, std::size_t row, const Which& which, const Set& set) {
        bool any = false;
        for (Cable& cable : catalogue_.cables) {
            if (!meets(cable, which)) continue;
            set(cable);
            any = true;
        }
        if (!any) sheet.fault(row, "the row fits no cable of cable/size.csv");
    }

    /// Calls `set(cable, sheet, row)` for the cable of each row's family, cores and section.
    template <class Set>
    void by_cores(const char* name, const Set& set) {
        Sheet sheet = open(name);
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            Which which;
            which.family = family(sheet, i);
            if (!which.family) continue;
            which.cores = static_cast<int>(sheet.number(i, "cores"));
            which.section = square_millimetres(sheet.number(i, "section_mm2"));
            each(sheet, i, which, [&](Cable& cable) { set(cable, sheet, i); });
        }
    }

    /// Calls `set(duty, sheet, row)` for the duty of each row's family, loaded cores and section.
    template <class Set>
    void by_loaded(const char* name, const Set& set) {
        Sheet sheet = open(name);
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            Which which;
            which.family = family(sheet, i);
            if (!which.family) continue;
            const double loaded = sheet.number(i, "loaded");
            if (loaded != 2 && loaded != 3) {
                sheet.fault(i, "two or three cores are loaded");
                continue;
            }
            which.loaded = static_cast<int>(loaded);
            which.section = square_millimetres(sheet.number(i, "section_mm2"));
            each(sheet, i, which,
                 [&](Cable& cable) { set(loaded == 3 ? cable.three : cable.two, sheet, i); });
        }
    }

    const Conductor* conductor(Metal metal, SquareMillimetres section) const {
        for (const Conductor& c : catalogue_.conductors) {
            if (c.metal == metal && c.section == section) return &c;
        }
        return nullptr;
    }

    void core_resistances() {
        for (Cable& cable : catalogue_.cables) {
            const Metal metal = make_of(catalogue_, cable).metal;
            if (const Conductor* line = conductor(metal, cable.section)) cable.r20 = line->r20;
            if (const Conductor* cpc = conductor(metal, cable.cpc)) cable.cpc_r20 = cpc->r20;
        }
    }

    void reactances() {
        Sheet sheet = open("cable/conductor_reactance.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            Which which;
            which.insulation = insulation_of(sheet.word(i, "insulation"));
            if (!which.insulation) {
                sheet.fault(i, fmt::format("{} is no insulation", sheet.word(i, "insulation")));
                continue;
            }
            which.section = square_millimetres(sheet.number(i, "section_mm2"));
            each(sheet, i, which, [&](Cable& cable) {
                cable.x = sheet.cited(i, milliohms_per_metre(sheet.number(i, "x_mohm_per_m")));
            });
        }
    }

    void armour() {
        by_cores("cable/armour_resistance.csv", [](Cable& cable, Sheet& sheet, std::size_t i) {
            cable.armour_r20 =
                sheet.cited(i, milliohms_per_metre(sheet.number(i, "r20_mohm_per_m")));
        });
        by_cores("cable/armour_area.csv", [](Cable& cable, Sheet& sheet, std::size_t i) {
            cable.armour_area = sheet.cited(i, square_millimetres(sheet.number(i, "area_mm2")));
        });
        by_cores("cable/overall_diameter.csv", [](Cable& cable, Sheet& sheet, std::size_t i) {
            cable.overall = sheet.cited(i, millimetres(sheet.number(i, "overall_mm")));
        });
    }

    void ratings() {
        by_loaded("cable/rating.csv", [](Duty& duty, Sheet& sheet, std::size_t i) {
            const std::string word = sheet.word(i, "method");
            const auto method = method_of(word);
            if (!method) return sheet.fault(i, fmt::format("{} is not a reference method", word));
            duty.rating[static_cast<std::size_t>(*method)] =
                sheet.cited(i, amperes(sheet.number(i, "current_a")));
        });
    }

    void drops() {
        by_loaded("cable/voltage_drop.csv", [](Duty& duty, Sheet& sheet, std::size_t i) {
            duty.drop_r = sheet.cited(i, milliohms_per_metre(sheet.number(i, "r_mv_per_a_m")));
            duty.drop_x = sheet.cited(i, milliohms_per_metre(sheet.number(i, "x_mv_per_a_m")));
        });
    }

    /// One fault that names all figures the cable lacks.
    void check(const Cable& cable) {
        const Make& make = make_of(catalogue_, cable);
        std::string lacks;
        const auto need = [&](const Citation* citation, const std::string& what) {
            if (!citation) lacks += (lacks.empty() ? "" : ", ") + what;
        };
        need(cable.r20.citation, "resistance of a core");
        if (cable.cpc.number() > 0) need(cable.cpc_r20.citation, "resistance of the cpc");
        need(cable.x.citation, "reactance");
        if (make.armoured) {
            need(cable.armour_r20.citation, "resistance of the armour");
            need(cable.armour_area.citation, "section of the armour");
            need(cable.overall.citation, "overall diameter");
        }
        for (int loaded = 2; loaded <= std::min(cable.cores, 3); ++loaded) {
            const Duty& duty = cable.duty(loaded);
            const std::string with = fmt::format(" with {} loaded", loaded);
            need(duty.drop_r.citation, "voltage drop" + with);
            for (const auto& method : make.method) {
                if (!method) continue;
                need(duty.rating[static_cast<std::size_t>(*method)].citation,
                     fmt::format("rating {}", method_word(*method)) + with);
            }
        }
        if (lacks.empty()) return;
        fault("cable/",
              fmt::format("the tables are incomplete for {} {} x {} mm2: no {}",
                          family_word(cable.family), cable.cores, cable.section.number(), lacks));
    }

    EmbeddedFiles files_;
    Catalogue& catalogue_;
    Faults& faults_;
};

}  // namespace

void read_cables(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    CableReader(files, catalogue, faults).read();
}

}  // namespace toft::tables
