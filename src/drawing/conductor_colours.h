#pragma once
// Colours by which IEC 60445 lets conductors be told apart. The standard names them; the shades are
// our choice, set apart in lightness and from the palette. Green and yellow are used only together,
// as bands of one line (see banded.h). For nothing but conductors.

#include "drawing/style.h"

namespace toft::drawing::conductor {

inline constexpr Colour brown{0x6B3F16};
inline constexpr Colour blue{0x1E6FC8};
inline constexpr Colour grey{0x8C9196};
inline constexpr Colour black{0x0A0A0A};
inline constexpr Colour green{0x1F8A3B};
inline constexpr Colour yellow{0xF3CF1C};

}  // namespace toft::drawing::conductor
