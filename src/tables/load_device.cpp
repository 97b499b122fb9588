#include "tables/sheet.h"

#include "base/order.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::tables {

namespace {

constexpr Kind kinds[] = {Kind::fuse, Kind::rewirable, Kind::breaker, Kind::rcbo, Kind::moulded};

std::string curve_of(Sheet& sheet, std::size_t row) {
    const std::string word = sheet.word(row, "curve");
    return word == "-" ? std::string() : word;
}

std::string name_of(const Device& device) {
    return fmt::format("{} {} {} A", device.standard, device.curve, device.rating.number());
}

/// The devices that one row speaks of.
struct Band {
    std::string standard;
    std::string curve;
    double from = 0;
    double to = 0;

    bool holds(const Device& device) const {
        const double rating = device.rating.number();
        return device.standard == standard && device.curve == curve && rating >= from &&
               rating <= to;
    }
};

Band band_of(Sheet& sheet, std::size_t row) {
    return {sheet.word(row, "standard"), curve_of(sheet, row), sheet.number(row, "rating_from_a"),
            sheet.number(row, "rating_to_a")};
}

Band one_of(Sheet& sheet, std::size_t row) {
    const double rating = sheet.number(row, "rating_a");
    return {sheet.word(row, "standard"), curve_of(sheet, row), rating, rating};
}

void longest_first(std::vector<CurvePoint>& points) {
    put_in_order(points, [](const CurvePoint& a, const CurvePoint& b) { return b.time < a.time; });
}

class DeviceReader {
public:
    DeviceReader(EmbeddedFiles files, Catalogue& catalogue, Faults& faults)
        : files_(files), catalogue_(catalogue), faults_(faults) {}

    void all() {
        ratings();
        kinds_of_standards();
        overload();
        curves();
        holds();
        trips();
        melting();
        fuse_ratio();
        let_through();
        let_through_at();
        rcds();
        residual();
    }

private:
    Sheet open(const char* name) { return {files_, name, catalogue_.citations, faults_}; }

    std::vector<Device>& devices() { return catalogue_.devices; }

    void fault(const char* file, std::string says) {
        faults_.push_back({"data", file, std::move(says), "", {}});
    }

    void ratings() {
        Sheet sheet = open("device/device.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            Device device;
            device.standard = sheet.word(i, "standard");
            device.curve = curve_of(sheet, i);
            device.rating = amperes(sheet.number(i, "rating_a"));
            device.breaking = sheet.cited(i, kiloamperes(sheet.number(i, "breaking_ka")));
            devices().push_back(std::move(device));
        }
    }

    void kinds_of_standards() {
        Sheet sheet = open("device/kind.csv");
        std::vector<const Device*> known;
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const std::string standard = sheet.word(i, "standard");
            const std::string word = sheet.word(i, "kind");
            const auto* kind = std::find_if(std::begin(kinds), std::end(kinds),
                                            [&](Kind k) { return word == kind_word(k); });
            if (kind == std::end(kinds)) sheet.fault(i, fmt::format("{} is no kind", word));
            sheet.cite(i);
            for (Device& device : devices()) {
                if (device.standard != standard || kind == std::end(kinds)) continue;
                device.kind = *kind;
                known.push_back(&device);
            }
        }
        for (const Device& device : devices()) {
            if (std::find(known.begin(), known.end(), &device) == known.end()) {
                fault("device/kind.csv", name_of(device) + " has no kind");
            } else if (device.fuse() != device.curve.empty()) {
                fault("device/kind.csv", name_of(device) + " has the curve of another kind");
            }
        }
    }

    void overload() {
        Sheet sheet = open("device/overload.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const std::string standard = sheet.word(i, "standard");
            const Cited<double> i2 = sheet.figure(i, "i2_ratio");
            for (Device& device : devices()) {
                if (device.standard == standard) device.i2 = i2;
            }
        }
        for (const Device& device : devices()) {
            if (device.i2.value < 1) fault("device/overload.csv", name_of(device) + " has no I2");
        }
    }

    void curves() {
        Sheet sheet = open("device/curve.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const Band band = one_of(sheet, i);
            const CurvePoint point{seconds(sheet.number(i, "time_s")),
                                   sheet.cited(i, amperes(sheet.number(i, "current_a")))};
            for (Device& device : devices()) {
                if (band.holds(device)) device.points.push_back(point);
            }
        }
        for (Device& device : devices()) {
            longest_first(device.points);
            if (device.points.empty()) {
                fault("device/curve.csv", name_of(device) + " has no point");
            }
        }
    }

    void holds() {
        Sheet sheet = open("device/hold.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const Band band = band_of(sheet, i);
            const Seconds time = seconds(sheet.number(i, "time_s"));
            const double current = sheet.number(i, "current");
            const bool multiple = sheet.word(i, "unit") == "In";
            for (Device& device : devices()) {
                if (!band.holds(device)) continue;
                const Amperes held = multiple ? device.rating * current : amperes(current);
                device.holds.push_back({time, sheet.cited(i, held)});
            }
        }
        for (Device& device : devices()) longest_first(device.holds);
    }

    void trips() {
        Sheet sheet = open("device/trip.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const Band band = band_of(sheet, i);
            const Seconds time = seconds(sheet.number(i, "time_s"));
            const double multiple = sheet.number(i, "current_in");
            for (Device& device : devices()) {
                if (!band.holds(device)) continue;
                device.trips.push_back({time, sheet.cited(i, device.rating * multiple)});
            }
        }
        for (Device& device : devices()) longest_first(device.trips);
    }

    void melting() {
        Sheet sheet = open("device/pre_arcing.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const double rating = sheet.number(i, "rating_a");
            const Band band{sheet.word(i, "standard"), "", rating, rating};
            const auto least = sheet.cited(i, ampere_square_seconds(sheet.number(i, "i2t_a2s")));
            for (Device& device : devices()) {
                if (band.holds(device)) device.melting = least;
            }
        }
    }

    void fuse_ratio() {
        Sheet sheet = open("device/fuse_ratio.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const Band band{sheet.word(i, "standard"), "", sheet.number(i, "rating_from_a"), most};
            const auto ratio = sheet.figure(i, "ratio");
            for (Device& device : devices()) {
                if (band.holds(device)) device.fuse_ratio = ratio;
            }
        }
    }

    /// A breaker has either a limit or a row that says it has none: a lost row is no silence.
    void let_through() {
        std::vector<int> rows(devices().size(), 0);
        Sheet limits = open("device/let_through.csv");
        for (std::size_t i = 0; i < limits.rows(); ++i) {
            const Band band = band_of(limits, i);
            const Amperes breaking = kiloamperes(limits.number(i, "breaking_ka"));
            const auto limit = limits.cited(i, ampere_square_seconds(limits.number(i, "i2t_a2s")));
            for (std::size_t d = 0; d < devices().size(); ++d) {
                Device& device = devices()[d];
                if (!band.holds(device) || device.breaking.value != breaking) continue;
                device.let_through = limit;
                ++rows[d];
            }
        }
        Sheet unlimited = open("device/unlimited.csv");
        for (std::size_t i = 0; i < unlimited.rows(); ++i) {
            const Band band = band_of(unlimited, i);
            unlimited.cite(i);
            for (std::size_t d = 0; d < devices().size(); ++d) rows[d] += band.holds(devices()[d]);
        }
        for (std::size_t d = 0; d < devices().size(); ++d) {
            if (rows[d] == (devices()[d].fuse() ? 0 : 1)) continue;
            fault("device/let_through.csv", fmt::format("{} has {} rows of let-through or of none",
                                                        name_of(devices()[d]), rows[d]));
        }
    }

    /// Levels below the breaking capacity, for breakers that have a limit there.
    void let_through_at() {
        Sheet sheet = open("device/let_through_at.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const Band band = band_of(sheet, i);
            const Amperes level = kiloamperes(sheet.number(i, "fault_ka"));
            const auto limit = sheet.cited(i, ampere_square_seconds(sheet.number(i, "i2t_a2s")));
            for (Device& device : devices()) {
                if (!band.holds(device) || !device.let_through || level >= device.breaking.value)
                    continue;
                device.let_through_at.push_back({level, limit});
            }
        }
        for (Device& device : devices()) {
            put_in_order(device.let_through_at, [](const LetThrough& a, const LetThrough& b) {
                return a.up_to < b.up_to;
            });
        }
    }

    void rcds() {
        Sheet sheet = open("device/rcd.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            RcdTimes& times = times_of(sheet.word(i, "kind"));
            const auto longest = sheet.cited(i, seconds(sheet.number(i, "longest_ms") / 1000));
            const Seconds shortest = seconds(sheet.number(i, "shortest_ms") / 1000);
            const double multiple = sheet.number(i, "multiple");
            if (multiple == 1) {
                times.longest_1 = longest;
                times.shortest_1 = shortest;
            } else if (multiple == 2) {
                times.longest_2 = longest;
                times.shortest_2 = shortest;
            } else if (multiple == 5) {
                times.longest_5 = longest;
                times.shortest_5 = shortest;
            }
        }
    }

    RcdTimes& times_of(const std::string& kind) {
        return kind == "delayed" ? catalogue_.rcd_delayed : catalogue_.rcd_general;
    }

    void residual() {
        Sheet sheet = open("device/residual.csv");
        for (std::size_t i = 0; i < sheet.rows(); ++i) {
            const auto sensitivity =
                sheet.cited(i, milliamperes(sheet.number(i, "sensitivity_ma")));
            const std::string kind = sheet.word(i, "kind");
            const std::string place = sheet.word(i, "place");
            if (place == "head") {
                catalogue_.run_rcds.push_back(
                    {sensitivity.value, kind == "delayed", times_of(kind).longest_1});
            }
            for (Device& device : devices()) {
                if (device.standard == place) device.residual = {sensitivity, times_of(kind)};
            }
        }
        for (const Device& device : devices()) {
            if (device.residual.has_value() != (device.kind == Kind::rcbo)) {
                fault("device/residual.csv", name_of(device) + " and its kind disagree");
            }
        }
    }

    static constexpr double most = 1e9;

    EmbeddedFiles files_;
    Catalogue& catalogue_;
    Faults& faults_;
};

}  // namespace

const char* kind_word(Kind kind) {
    switch (kind) {
        case Kind::fuse:
            return "fuse";
        case Kind::rewirable:
            return "rewirable";
        case Kind::breaker:
            return "breaker";
        case Kind::rcbo:
            return "rcbo";
        case Kind::moulded:
            return "moulded";
    }
    return "";
}

void read_devices(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    DeviceReader(files, catalogue, faults).all();
}

}  // namespace toft::tables
