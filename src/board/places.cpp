#include "board/places.h"

#include <algorithm>
#include <array>

namespace toft::board {

namespace {

/// Modules that stand side by side on one rail.
using Block = std::vector<Module>;

int places_in(const Block& block) {
    int places = 0;
    for (const Module& module : block) places += module.places;
    return places;
}

/// A way with the residual device it needs beside it.
Block apart_block(const parts::Way& way, std::size_t index) {
    const int poles = way.phases == 3 ? 3 : 1;
    Block block{{Holds::way, index, poles, 0}};
    if (way.residual_apart()) block.push_back({Holds::residual, index, poles + 1, 0});
    return block;
}

std::vector<Block> single_phase_blocks(const std::vector<parts::Way>& ways, int spare) {
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < ways.size(); ++i) blocks.push_back(apart_block(ways[i], i));
    for (int i = 0; i < spare; ++i) blocks.push_back({{Holds::spare, 0, 1, 0}});
    return blocks;
}

/// Rounds of three places, one a line, until nothing is left for any.
void add_rounds(const std::array<std::vector<std::size_t>, 3>& on_line, int spare,
                std::vector<Block>& blocks) {
    const auto longest = std::max({on_line[0].size(), on_line[1].size(), on_line[2].size()});
    for (std::size_t round = 0; round < longest || spare > 0; ++round) {
        Block block;
        for (int line = 0; line < 3; ++line) {
            const auto& here = on_line[static_cast<std::size_t>(line)];
            if (round < here.size()) {
                block.push_back({Holds::way, here[round], 1, line});
            } else if (spare > 0) {
                block.push_back({Holds::spare, 0, 1, line});
                --spare;
            } else {
                block.push_back({Holds::free, 0, 1, line});
            }
        }
        blocks.push_back(std::move(block));
    }
}

std::vector<Block> three_phase_blocks(const std::vector<parts::Way>& ways, int spare) {
    std::vector<Block> blocks;
    std::vector<Block> last;
    std::array<std::vector<std::size_t>, 3> on_line;
    for (std::size_t i = 0; i < ways.size(); ++i) {
        if (ways[i].residual_apart()) {
            last.push_back(apart_block(ways[i], i));
        } else if (ways[i].line == parts::every_line) {
            blocks.push_back(apart_block(ways[i], i));
        } else {
            on_line[static_cast<std::size_t>(ways[i].line)].push_back(i);
        }
    }
    add_rounds(on_line, spare, blocks);
    for (Block& block : last) {
        for (Module& module : block) module.line = std::max(0, ways[module.way].line);
        blocks.push_back(std::move(block));
    }
    return blocks;
}

}  // namespace

int Rail::places() const { return places_in(modules); }

int switch_places(int phases) { return phases == 3 ? 4 : 2; }

std::vector<Rail> rails_of(const std::vector<parts::Way>& ways, const Filling& filling) {
    std::vector<Rail> rails(1);
    rails[0].modules.push_back({Holds::main_switch, 0, switch_places(filling.phases), 0});
    const std::vector<Block> blocks = filling.phases == 3
                                          ? three_phase_blocks(ways, filling.spare)
                                          : single_phase_blocks(ways, filling.spare);
    for (const Block& block : blocks) {
        if (rails.back().places() + places_in(block) > filling.rail_places) rails.emplace_back();
        rails.back().modules.insert(rails.back().modules.end(), block.begin(), block.end());
    }
    return rails;
}

int places_of(const std::vector<Rail>& rails) {
    int places = 0;
    for (const Rail& rail : rails) places += rail.places();
    return places;
}

}  // namespace toft::board
