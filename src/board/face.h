#pragma once
// The front of one device as it looks on the rail, with the words printed on it.

#include "board/places.h"
#include "drawing/scene.h"

#include <string>
#include <vector>

namespace toft::board {

/// What a device is, told by its shape.
enum class Shape {
    breaker,   ///< a toggle
    residual,  ///< a toggle and a test button
    fuse,      ///< a barrel
    unknown,   ///< a dashed outline with a question mark
    blank      ///< a dashed outline: spare or free
};

struct Face {
    Shape shape = Shape::blank;
    std::vector<std::string> lines;  ///< the first is set bold; at most three
    int poles = 1;
    const char* kind = "";  ///< class name of its group
    std::string title;      ///< for who cannot see it
};

/// Width that one place asks for so that its words have room, and height of every device.
inline constexpr double place_wide = 36;
inline constexpr double face_high = 80;

/// "B20", "30 mA", "type A".
Face way_face(const parts::Way& way);
/// The residual current device beside a fused way.
Face residual_face(const parts::Way& way);
Face main_switch_face(int phases);
/// The device at the head of the run.
Face head_face(const answer::RunAnswer& run);

Face face_of(const Module& module, const std::vector<parts::Way>& ways, int phases);

/// The face from `corner`, `place_wide` a pole and `face_high` high.
drawing::Items face_items(const Face& face, drawing::Point corner, int places);

}  // namespace toft::board
