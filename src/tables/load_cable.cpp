#include "tables/sheet.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::tables {

namespace {

class CableReader {
public:
    CableReader(EmbeddedFiles files, Catalogue& catalogue, Faults& faults)
        : files_(files), catalogue_(catalogue), faults_(faults) {}

    void read() {
        conductors();
        sizes();
        electrical();
        ratings();
        constants();
        factors();
    }

private:
    Sheet open(const char* name) { return {files_, name, catalogue_.citations, faults_}; }

    void conductors() {
        Sheet sheet = open("cable/conductor_resistance.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            if (sheet.word(i, "material") != "copper") continue;
            catalogue_.conductors.push_back(
                {Metal::copper, square_millimetres(sheet.number(i, "section_mm2")),
                 sheet.cited(i, milliohms_per_metre(sheet.number(i, "r20_mohm_per_m")))});
        }
    }

    void sizes() {
        Sheet sheet = open("cable/overall_diameter.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            if (sheet.word(i, "family") != family_word(Family::armoured_xlpe_copper)) continue;
            Cable cable;
            cable.cores = static_cast<int>(sheet.number(i, "cores"));
            cable.section = square_millimetres(sheet.number(i, "section_mm2"));
            cable.cpc = cable.section;
            cable.overall = sheet.cited(i, millimetres(sheet.number(i, "overall_mm")));
            catalogue_.cables.push_back(cable);
        }
        std::stable_sort(catalogue_.cables.begin(), catalogue_.cables.end(),
                         [](const Cable& a, const Cable& b) {
                             return a.cores != b.cores ? a.cores < b.cores : a.section < b.section;
                         });
    }

    /// Calls `set(cable, row)` for every cable of the row's section (and cores, where a column
    /// says).
    template <class Set>
    void each(Sheet& sheet, bool by_cores, const Set& set) {
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const auto section = square_millimetres(sheet.number(i, "section_mm2"));
            const int cores = by_cores ? static_cast<int>(sheet.number(i, "cores")) : 0;
            for (Cable& cable : catalogue_.cables) {
                if (cable.section == section && (cores == 0 || cable.cores == cores)) set(cable, i);
            }
        }
    }

    void electrical() {
        for (Cable& cable : catalogue_.cables) {
            for (const Conductor& c : catalogue_.conductors) {
                if (c.section == cable.section) cable.r20 = cable.cpc_r20 = c.r20;
            }
        }
        Sheet x = open("cable/conductor_reactance.csv");
        each(x, false, [&](Cable& cable, std::size_t i) {
            cable.x = x.cited(i, milliohms_per_metre(x.number(i, "x_mohm_per_m")));
        });
        Sheet r = open("cable/armour_resistance.csv");
        each(r, true, [&](Cable& cable, std::size_t i) {
            cable.armour_r20 = r.cited(i, milliohms_per_metre(r.number(i, "r20_mohm_per_m")));
        });
        Sheet area = open("cable/armour_area.csv");
        each(area, true, [&](Cable& cable, std::size_t i) {
            cable.armour_area = area.cited(i, square_millimetres(area.number(i, "area_mm2")));
        });
    }

    void ratings() {
        Sheet rating = open("cable/rating.csv");
        each(rating, false, [&](Cable& cable, std::size_t i) {
            const std::string method = rating.word(i, "method");
            const ReferenceMethod at = method == "C"   ? ReferenceMethod::c
                                       : method == "E" ? ReferenceMethod::e
                                                       : ReferenceMethod::d;
            if (method != "C" && method != "E" && method != "D") {
                rating.fault(i, fmt::format("{} is not a reference method", method));
            }
            cable.two.rating[static_cast<std::size_t>(at)] =
                rating.cited(i, amperes(rating.number(i, "current_a")));
        });
        Sheet drop = open("cable/voltage_drop.csv");
        each(drop, false, [&](Cable& cable, std::size_t i) {
            cable.two.drop_r = drop.cited(i, milliohms_per_metre(drop.number(i, "r_mv_per_a_m")));
            cable.two.drop_x = drop.cited(i, milliohms_per_metre(drop.number(i, "x_mv_per_a_m")));
        });
    }

    void constants() {
        CableConstants& k = catalogue_.cable_constants;
        Sheet material = open("cable/material.csv");
        for (std::size_t i = 0; i < material.rows(); ++i) {
            const std::string metal = material.word(i, "material");
            Material& m = metal == "copper" ? k.copper : metal == "steel" ? k.steel : k.aluminium;
            m = {material.cited(i, per_kelvin(material.number(i, "alpha20_per_k"))),
                 material.cited(i, kelvins(material.number(i, "beta_c"))),
                 material.figure(i, "big_k")};
        }
        Make& make = catalogue_.makes[static_cast<std::size_t>(Family::armoured_xlpe_copper)];
        make.standard = "BS 5467";
        make.method = {ReferenceMethod::c, ReferenceMethod::e, ReferenceMethod::e,
                       std::nullopt,       std::nullopt,       ReferenceMethod::c,
                       std::nullopt,       ReferenceMethod::d, ReferenceMethod::d,
                       std::nullopt};
        Sheet heat = open("cable/fault_k.csv");
        for (std::size_t i = 0; i < heat.rows(); ++i) {
            const std::string use = heat.word(i, "use");
            FaultHeat& h = use == "live"     ? make.live
                           : use == "core"   ? make.core
                           : use == "armour" ? make.armour
                                             : k.separate;
            h = {heat.cited(i, celsius(heat.number(i, "initial_c"))),
                 heat.cited(i, celsius(heat.number(i, "final_c"))),
                 heat.cited(i, heat_constant(heat.number(i, "k")))};
        }
        Sheet ac = open("cable/armour_ac.csv");
        for (std::size_t i = 0; i < ac.rows(); ++i) {
            if (ac.word(i, "key") == "ac_factor") k.armour_ac_factor = ac.figure(i, "value");
            if (ac.word(i, "key") == "reactance") {
                k.armour_x = ac.cited(i, milliohms_per_metre(ac.number(i, "value")));
            }
        }
    }

    /// Reads a factor table whose rows go to one list or another by the word in `column`.
    template <class Pick>
    void split(const char* file, const char* column, const char* x, const Pick& pick) {
        Sheet sheet = open(file);
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            std::vector<TablePoint>* into = pick(sheet.word(i, column));
            if (into) sheet.points(*into, i, x, "factor");
        }
    }

    void factors() {
        CableConstants& k = catalogue_.cable_constants;
        Make& make = catalogue_.makes[static_cast<std::size_t>(Family::armoured_xlpe_copper)];
        split("cable/factor_ambient.csv", "place", "temperature_c", [&](const std::string& w) {
            return w == "air" ? &make.ambient_air : &make.ambient_ground;
        });
        split("cable/factor_soil.csv", "laying", "resistivity_k_m_per_w",
              [&](const std::string& w) { return w == "direct" ? &k.soil_direct : &k.soil_duct; });
        split("cable/factor_depth.csv", "laying", "depth_m", [&](const std::string& w) {
            return w == "direct" ? &k.depth_direct : &k.depth_duct;
        });
        split("cable/factor_grouping.csv", "arrangement", "circuits",
              [&](const std::string& w) -> std::vector<TablePoint>* {
                  if (w == "bunched") return &k.grouped_enclosed;
                  if (w == "clipped") return &k.grouped_clipped;
                  if (w == "tray") return &k.grouped_tray;
                  if (w == "buried direct") return &k.grouped_direct;
                  if (w == "buried in duct") return &k.grouped_duct;
                  return nullptr;
              });
        Sheet insulation = open("cable/factor_insulation.csv");
        for (std::size_t i = 0; i < insulation.rows(); ++i) {
            insulation.points(k.insulation, i, "length_mm", "factor");
        }
        for (auto* list :
             {&make.ambient_air, &make.ambient_ground, &k.soil_direct, &k.soil_duct,
              &k.depth_direct, &k.depth_duct, &k.grouped_clipped, &k.grouped_tray,
              &k.grouped_enclosed, &k.grouped_direct, &k.grouped_duct, &k.insulation}) {
            sort_points(*list);
            if (list->empty()) {
                faults_.push_back({"data", "cable/", "a factor table has no rows", "", {}});
            }
        }
    }

    EmbeddedFiles files_;
    Catalogue& catalogue_;
    Faults& faults_;
};

}  // namespace

const char* family_word(Family family) {
    static constexpr const char* words[families] = {
        "armoured XLPE copper", "armoured PVC copper",    "armoured XLPE aluminium",
        "flat twin and earth",  "unarmoured XLPE copper", "unarmoured PVC copper"};
    return words[static_cast<std::size_t>(family)];
}

const char* metal_word(Metal metal) {
    static constexpr const char* words[] = {"copper", "aluminium", "steel"};
    return words[static_cast<std::size_t>(metal)];
}

const char* method_word(ReferenceMethod method) {
    static constexpr const char* words[reference_methods] = {"A",   "B",   "C",   "E",  "D",
                                                             "100", "101", "102", "103"};
    return words[static_cast<std::size_t>(method)];
}

void read_cables(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    CableReader(files, catalogue, faults).read();
    for (const Cable& cable : catalogue.cables) {
        const bool whole = cable.r20.citation && cable.x.citation && cable.armour_r20.citation &&
                           cable.armour_area.citation && cable.two.drop_r.citation &&
                           cable.two.rating[2].citation && cable.two.rating[3].citation &&
                           cable.two.rating[4].citation;
        if (!whole) {
            faults.push_back({"data",
                              "cable/",
                              fmt::format("the tables are incomplete for {} x {} mm2", cable.cores,
                                          cable.section.number()),
                              "",
                              {}});
        }
    }
}

}  // namespace toft::tables
