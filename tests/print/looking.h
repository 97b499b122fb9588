#pragma once
// The fonts that tests print with, and printed images as numbers.

#include "print/font.h"
#include "print/fonts.h"

#include <fstream>
#include <sstream>
#include <string>

namespace toft::print {

using support::font_file;
using support::fonts;

}  // namespace toft::print
