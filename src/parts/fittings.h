#pragma once
// The things an installation is built of, drawn small: boards, the protective conductor, rods,
// pipes, break marks.

#include "drawing/scene.h"

#include <string>
#include <vector>

namespace toft::parts {

/// A protective conductor: green-and-yellow, banded.
drawing::Items protective_line(const std::vector<drawing::Point>& points, double width = 2.6);

/// An armoured cable: dark sheath with the armour's wires showing as dashes.
drawing::Items armoured_line(const std::vector<drawing::Point>& points, double width = 6);

/// A round cable without armour: its dark sheath.
drawing::Items sheathed_line(const std::vector<drawing::Point>& points, double width = 4.6);

/// A flat cable: its light sheath between two edges.
drawing::Items flat_line(const std::vector<drawing::Point>& points, double width = 6);

/// A box where two cables are joined.
drawing::Items joint_box(drawing::Point centre);

struct Board {
    drawing::Box box;
    int ways = 6;
    int chosen = -1;              ///< the way to look at, from 0; none below that
    bool main_switch = true;      ///< takes the first two places
    std::vector<int> poles = {};  ///< places each way takes; one where none is given
    bool residual = false;        ///< the chosen way opens on residual current too

    int poles_of(int way) const;
};

/// An enclosure with its ways in a row.
drawing::Items board_items(const Board& board);

/// Centre of a way.
drawing::Point way_centre(const Board& board, int way);

/// A terminal bar.
drawing::Items terminal_bar(const drawing::Box& box);

/// An earth rod from `top` down, with the fork of the earth sign at its foot, broken in the middle.
drawing::Items rod(drawing::Point top, double length);

/// A pipe as two lines with open ends.
drawing::Items pipe(const std::vector<drawing::Point>& points, double width);

/// Two zigzags with a gap between them, across a line that runs level through `at`.
drawing::Items break_mark(drawing::Point at, double height, drawing::Colour under);

}  // namespace toft::parts
