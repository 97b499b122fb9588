#pragma once
// Settings of one job for very many values of its varied figures, each made of pieces that were
// prepared before. Figures that share a place in the setting form a group; for each group a pool of
// settings is prepared as always, spread evenly over its ranges, and only what the group changes is
// kept. One value of each group then makes a setting by copying a few numbers. Nothing is
// reckoned a second way: every number comes from study::prepare. Page: docs/methods/tolerance.md.

#include "tolerance/varied.h"

#include <vector>

namespace toft::tolerance {

class Blend {
public:
    /// `place` and `varied` must outlive this.
    Blend(const Place& place, const std::vector<Varied>& varied, std::size_t pool);
    Blend(const Blend&) = delete;
    Blend& operator=(const Blend&) = delete;

    /// False where settings differ in more than figures: there is nothing to blend then.
    bool possible() const { return possible_; }

    std::size_t groups() const { return groups_.size(); }
    /// Settings in the pool of a group.
    std::size_t pool_of(std::size_t group) const { return groups_[group].pool; }
    /// Number of varied figures in a group.
    std::size_t figures_in(std::size_t group) const { return groups_[group].varied.size(); }

    /// Puts value number `k` of that group's pool into the setting.
    void put(std::size_t group, std::size_t k) {
        const Group& g = groups_[group];
        const double* from = g.kept.data() + k * g.places.size();
        for (double* place : g.places) *place = *from++;
    }
    const study::Setting<Silent>& setting() const { return setting_; }

    /// The values of all varied figures at those places of the pools.
    std::vector<double> values_at(const std::vector<std::size_t>& at) const;

private:
    struct Group {
        std::vector<std::size_t> varied;  ///< places in the list
        std::size_t pool = 0;
        std::vector<double*> places;      ///< in the setting
        std::vector<std::size_t> number;  ///< of those places
        std::vector<double> kept;         ///< by value, then by place
        std::vector<double> values;       ///< of the varied figures, by value
    };

    using Touched = std::vector<std::vector<bool>>;
    Touched touched();
    void look_from(const std::vector<double>& values, Touched& touched);
    void group_by(const Touched& touched);
    void fill(Group& group, std::size_t pool);

    const Place& place_;
    const std::vector<Varied>& varied_;
    std::vector<double> likely_;
    site::Job job_;
    study::Setting<Silent> setting_;
    std::vector<double*> all_places_;
    std::vector<Group> groups_;
    bool possible_ = true;
};

}  // namespace toft::tolerance
