#include "base/limit.h"
#include "guard/dark_parts.h"
#include "guard/hold_out.h"

#include <algorithm>

namespace toft::guard {

namespace {

constexpr Certainty no = Certainty::no;
constexpr Certainty possibly = Certainty::possibly;
constexpr Certainty surely = Certainty::surely;

Certainty unless(bool held) { return held ? no : possibly; }

const tables::Device* own_device(const DarkCase& c, std::size_t circuit) {
    if (circuit < c.devices.size() && c.devices[circuit]) return c.devices[circuit];
    const auto& named = circuit_at(c.view, circuit).device;
    return named ? find_device(*c.view.catalogue, *named) : nullptr;
}

const tables::Device* service_fuse(const DarkCase& c) {
    const auto& named = c.view.job->intake.service_fuse;
    return named ? find_device(*c.view.catalogue, *named) : nullptr;
}

/// The fuse or breaker `upstream` while the circuit's breaker clears a fault on the circuit.
Certainty overcurrent(const DarkCase& c, Trouble trouble, std::size_t circuit,
                      const tables::Device* upstream) {
    if (trouble == Trouble::weak_earth) return no;
    if (!upstream) return possibly;
    const tables::Device* own = own_device(c, circuit);
    switch (trouble) {
        case Trouble::solid_earth:
            return unless(holds_out(*upstream, c.view.catalogue->rcd_general.longest_5.value,
                                    c.sizes.far_earth));
        case Trouble::short_circuit:
            return unless(own && holds_out(*upstream, *own, c.sizes.far_short));
        default:
            return possibly;
    }
}

/// The current that is sure to open the circuit's breaker, on top of all other load.
Certainty overloaded(const DarkCase& c, std::size_t circuit, const tables::Device* upstream,
                     Amperes beside) {
    const tables::Device* own = own_device(c, circuit);
    if (!own || !upstream) return possibly;
    return unless(carries(*upstream, own->rating * own->i2.value + c.load + beside));
}

Certainty of_service(const DarkCase& c, Trouble trouble, std::size_t circuit) {
    const tables::Device* fuse = service_fuse(c);
    const site::Fact<Amperes>& demand = c.view.job->intake.demand;
    switch (trouble) {
        case Trouble::overload:
            return demand.known ? overloaded(c, circuit, fuse, demand.high) : possibly;
        case Trouble::run_earth:
            return unless(fuse && holds_out(*fuse, *c.scheme.device, c.sizes.near_earth));
        case Trouble::run_short:
            return unless(fuse && holds_out(*fuse, *c.scheme.device, c.sizes.near_short));
        case Trouble::run_weak:
        case Trouble::house_weak:
        case Trouble::loss:
            return no;
        default:
            return overcurrent(c, trouble, circuit, fuse);
    }
}

/// It is there, and opens at once: no delay waits for another.
bool quick_and_there(const Rcd& rcd) { return rcd.there_known && rcd.delay_known && !rcd.delayed; }

Certainty of_house_rcd(const DarkCase& c, Trouble trouble) {
    const Rcd& rcd = *c.chain.at(Post::house);
    switch (trouble) {
        case Trouble::weak_earth:
        case Trouble::solid_earth:
            return unless(selective(c.view, rcd, c.chain.rcd[c.chain.count - 1]));
        case Trouble::run_weak:
        case Trouble::run_earth:
        case Trouble::house_weak:
            return quick_and_there(rcd) ? surely : possibly;
        default:
            return no;
    }
}

/// As a residual current device.
Certainty residual_at_head(const DarkCase& c, Trouble trouble) {
    const Rcd* rcd = c.chain.at(Post::head);
    if (!rcd) return no;
    if (trouble == Trouble::weak_earth || trouble == Trouble::solid_earth) {
        return unless(selective(c.view, *rcd, c.chain.rcd[c.chain.count - 1]));
    }
    if (trouble != Trouble::run_earth && trouble != Trouble::run_weak) return no;
    return c.chain.at(Post::house) || c.chain.at(Post::before) ? possibly : surely;
}

Certainty of_head(const DarkCase& c, Trouble trouble, std::size_t circuit) {
    const Certainty residual = c.scheme.rcd ? no : residual_at_head(c, trouble);
    switch (trouble) {
        case Trouble::overload:
            return overloaded(c, circuit, c.scheme.device, amperes(0));
        case Trouble::run_short:
            return surely;
        case Trouble::run_earth:
            return std::max(residual, c.chain.count > 1 || c.view.on_tt() ? possibly : surely);
        case Trouble::run_weak:
            return residual;
        case Trouble::house_weak:
        case Trouble::loss:
            return no;
        default:
            return std::max(residual, overcurrent(c, trouble, circuit, c.scheme.device));
    }
}

}  // namespace

Certainty opening(const DarkCase& c, Trouble trouble, std::size_t circuit, const Opener& opener) {
    switch (opener.station) {
        case Station::service:
            return of_service(c, trouble, circuit);
        case Station::house_rcd:
            return of_house_rcd(c, trouble);
        case Station::head:
            return of_head(c, trouble, circuit);
        case Station::head_rcd:
            return residual_at_head(c, trouble);
        case Station::circuit:
            return on_circuit(trouble) && circuit == opener.circuit ? surely : no;
    }
    return possibly;
}

}  // namespace toft::guard
