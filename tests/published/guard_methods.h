#pragma once
// Methods of the published examples that ask after residual current protection of circuits.

#include "published/methods.h"

namespace toft::published {

/// What a circuit of that `kind` asks for (`IdN`, 0 for nothing) in a building of that `use`, with
/// a device of `In` where given; words have hyphens for spaces.
Results residual_need(const support::PublishedCase& published);

/// 1 where a device of `IdN.front`, `front` delayed or general, is apart from one of `IdN.own`.
Results residual_pair(const support::PublishedCase& published);

}  // namespace toft::published
