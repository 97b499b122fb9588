#pragma once
// What stands on a sheet of ground works.

#include "picture/looking.h"

#include <string>

namespace toft::digging {

inline std::string all_words(const drawing::Scene& scene) {
    std::string all;
    for (const drawing::Text& text : picture::texts_in(scene.items)) {
        all += picture::line_of(text) + "\n";
    }
    return all;
}

inline drawing::Box sheet_of(const drawing::Scene& scene) {
    return {0, 0, scene.width, scene.height};
}

}  // namespace toft::digging
