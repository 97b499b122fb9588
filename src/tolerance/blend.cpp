#include "tolerance/blend.h"

#include "tolerance/halton.h"
#include "tolerance/places.h"
#include "tolerance/quantile.h"

#include <algorithm>

namespace toft::tolerance {

namespace {

/// Soils are looked at as fields, which takes its time.
constexpr std::size_t fewer_soils = 4;

bool same(double a, double b) { return a == b || (a != a && b != b); }

/// The group that each figure belongs to: those that touch one place go together.
std::vector<std::size_t> joined(const std::vector<std::vector<bool>>& touched) {
    std::vector<std::size_t> group(touched.size());
    for (std::size_t i = 0; i < group.size(); ++i) {
        group[i] = i;
        for (std::size_t j = 0; j < i; ++j) {
            bool share = false;
            for (std::size_t p = 0; p < touched[i].size() && !share; ++p) {
                share = touched[i][p] && touched[j][p];
            }
            if (!share || group[i] == group[j]) continue;
            const std::size_t into = std::min(group[i], group[j]);
            const std::size_t from = std::max(group[i], group[j]);
            for (std::size_t k = 0; k <= i; ++k) {
                if (group[k] == from) group[k] = into;
            }
        }
    }
    return group;
}

}  // namespace

Blend::Blend(const Place& place, const std::vector<Varied>& varied, std::size_t pool)
    : place_(place), varied_(varied) {
    for (const Varied& v : varied) likely_.push_back(v.likely);
    job_ = job_at(place.job, varied, likely_);
    setting_ = prepared_in(place, job_);
    all_places_ = places_in(setting_);
    const Touched all = touched();
    if (!possible_) return;
    group_by(all);
    for (Group& group : groups_) {
        bool soil = false;
        for (const std::size_t v : group.varied) soil = soil || varied[v].kind == Kind::soil;
        fill(group, std::max<std::size_t>(2, soil ? pool / fewer_soils : pool));
    }
}

/// Which places each figure touches, the others likely, low or high.
Blend::Touched Blend::touched() {
    Touched all(varied_.size(), std::vector<bool>(all_places_.size()));
    std::vector<double> low;
    std::vector<double> high;
    for (const Varied& v : varied_) {
        low.push_back(v.low);
        high.push_back(v.high);
    }
    look_from(likely_, all);
    look_from(low, all);
    look_from(high, all);
    return all;
}

void Blend::look_from(const std::vector<double>& values, Touched& touched) {
    const site::Job job = job_at(place_.job, varied_, values);
    auto base = prepared_in(place_, job);
    const auto from = places_in(base);
    for (std::size_t i = 0; i < varied_.size() && possible_; ++i) {
        for (const double value : {varied_[i].low, varied_[i].likely, varied_[i].high}) {
            site::Job other = job;
            varied_[i].set(other, value, value);
            auto setting = prepared_in(place_, other);
            const auto to = places_in(setting);
            possible_ = possible_ && to.size() == all_places_.size() && to.size() == from.size();
            if (!possible_) return;
            for (std::size_t p = 0; p < to.size(); ++p) {
                if (!same(*from[p], *to[p])) touched[i][p] = true;
            }
        }
    }
}

void Blend::group_by(const Touched& touched) {
    const std::vector<std::size_t> group = joined(touched);
    for (std::size_t first = 0; first < group.size(); ++first) {
        if (group[first] != first) continue;
        Group g;
        std::vector<bool> any(all_places_.size());
        for (std::size_t i = 0; i < group.size(); ++i) {
            if (group[i] != first) continue;
            g.varied.push_back(i);
            for (std::size_t p = 0; p < any.size(); ++p) any[p] = any[p] || touched[i][p];
        }
        for (std::size_t p = 0; p < any.size(); ++p) {
            if (!any[p]) continue;
            g.places.push_back(all_places_[p]);
            g.number.push_back(p);
        }
        // What changes no figure of the setting changes no rule.
        if (!g.places.empty()) groups_.push_back(std::move(g));
    }
    if (groups_.size() > primes.size()) possible_ = false;
    for (const Group& g : groups_) possible_ = possible_ && g.varied.size() <= primes.size();
    if (!possible_) groups_.clear();
}

void Blend::fill(Group& g, std::size_t pool) {
    g.pool = pool;
    Halton points(g.varied.size());
    site::Job job = job_;
    for (std::size_t k = 0; k < pool; ++k) {
        const std::vector<double>& point = points.next();
        for (std::size_t i = 0; i < g.varied.size(); ++i) {
            const Varied& v = varied_[g.varied[i]];
            const double even = (static_cast<double>(k) + 0.5) / static_cast<double>(pool);
            const double share = g.varied.size() == 1 ? even : point[i];
            g.values.push_back(quantile(v.spread, v.low, v.high, share));
            v.set(job, g.values.back(), g.values.back());
        }
        auto setting = prepared_in(place_, job);
        const auto places = places_in(setting);
        if (places.size() != all_places_.size()) {
            possible_ = false;
            return;
        }
        for (const std::size_t p : g.number) g.kept.push_back(*places[p]);
    }
}

std::vector<double> Blend::values_at(const std::vector<std::size_t>& at) const {
    std::vector<double> values = likely_;
    for (std::size_t g = 0; g < groups_.size(); ++g) {
        const auto& varied = groups_[g].varied;
        for (std::size_t i = 0; i < varied.size(); ++i) {
            values[varied[i]] = groups_[g].values[at[g] * varied.size() + i];
        }
    }
    return values;
}

}  // namespace toft::tolerance
