#pragma once
// Looking at symbols: shapes of one sort at any depth, and whether there is a text.

#include "drawing/scene.h"

#include <vector>

namespace toft::symbol {

template <class Shape>
std::vector<Shape> all_of(const drawing::Items& items) {
    std::vector<Shape> found;
    for (const drawing::Item& item : items) {
        if (const auto* one = std::get_if<Shape>(&item.shape)) found.push_back(*one);
        if (const auto* group = std::get_if<drawing::Group>(&item.shape)) {
            for (const Shape& inner : all_of<Shape>(group->items)) found.push_back(inner);
        }
    }
    return found;
}

}  // namespace toft::symbol
