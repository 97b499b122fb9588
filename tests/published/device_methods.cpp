#include "published/device_methods.h"

#include "device/curve.h"
#include "device/hold.h"
#include "device/selectivity.h"
#include "study/figures.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <stdexcept>

namespace toft::published {

namespace {

using support::PublishedCase;

const tables::Device& device_of(const PublishedCase& c, const std::string& before = "") {
    static const std::map<std::string, std::string> standards{
        {"88-2", "BS 88-2"},         {"88-3", "BS 88-3"},      {"1361", "BS 1361"},
        {"3036", "BS 3036"},         {"60898", "BS EN 60898"}, {"61009", "BS EN 61009"},
        {"60947-2", "BS EN 60947-2"}};
    const std::string curve = c.words.count(before + "curve") ? c.word(before + "curve") : "";
    return support::device(standards.at(c.word(before + "standard")), curve,
                           c.number(before + "In"));
}

void within_time(const PublishedCase& c, const tables::Device& device, Results& results) {
    Silent ledger;
    const Seconds time = seconds(c.number("t"));
    const site::Job job = support::plain_job();
    const auto scheme = support::scheme(support::cable(3, 10), study::Protective::core, device);
    const Amperes ia = device::operating_current(ledger, unnamed, device, time);
    results["Ia"] = ia.number();
    results["Zs"] = study::largest_loop_for(ledger, support::prepared(job), scheme, time).number();
    results["Zs.whole"] = (support::catalogue().limits.u0.value / ia).number();
}

void at_current(const tables::Device& device, Amperes current, Results& results) {
    Silent ledger;
    results["t.op"] = device::operating_time(ledger, unnamed, device, current).number();
    results["t.hold"] = device::holding_time(ledger, unnamed, device, current).number();
    results["I2t"] = device::let_through(ledger, unnamed, device, current).number();
}

}  // namespace

Results device(const PublishedCase& c) {
    const tables::Device& device = device_of(c);
    Results results{{"Icn", device.breaking.value.number()},
                    {"In.share", support::catalogue().limits.overload_i2.value / device.i2.value}};
    if (c.numbers.count("t")) within_time(c, device, results);
    if (c.numbers.count("I")) at_current(device, amperes(c.number("I")), results);
    if (c.numbers.count("times")) at_current(device, device.rating * c.number("times"), results);
    return results;
}

Results selectivity(const PublishedCase& c) {
    Silent ledger;
    const device::Pair pair{device_of(c, "up."), device_of(c, "down.")};
    return {{"Is", device::selectivity(ledger, pair, amperes(c.number("I"))).to.number()}};
}

Results residual_times(const PublishedCase& c) {
    const auto& all = support::catalogue();
    const tables::RcdTimes& times = c.word("kind") == "delayed" ? all.rcd_delayed : all.rcd_general;
    const double multiple = c.number("times");
    if (multiple == 1) {
        return {{"longest", times.longest_1.value.number()},
                {"shortest", times.shortest_1.number()}};
    }
    if (multiple == 2) {
        return {{"longest", times.longest_2.value.number()},
                {"shortest", times.shortest_2.number()}};
    }
    if (multiple == 5) {
        return {{"longest", times.longest_5.value.number()},
                {"shortest", times.shortest_5.number()}};
    }
    throw std::runtime_error("no test at that multiple");
}

Results largest_electrode(const PublishedCase& c) {
    const auto& all = support::catalogue();
    const Amperes wanted = amperes(c.number("IdN"));
    const Volts touch = all.limits.touch_voltage.value;
    for (const tables::RunRcd& rcd : all.run_rcds) {
        if (rcd.sensitivity == wanted) return {{"RA", (touch / rcd.sensitivity).number()}};
    }
    for (const tables::Device& device : all.devices) {
        if (device.residual && device.residual->sensitivity.value == wanted) {
            return {{"RA", (touch / device.residual->sensitivity.value).number()}};
        }
    }
    throw std::runtime_error("no device of that sensitivity");
}

}  // namespace toft::published
