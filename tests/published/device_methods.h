#pragma once
// Methods of the published examples that ask after fuses, breakers and residual current devices.

#include "published/methods.h"

namespace toft::published {

/// A device by `standard`, `curve` (breakers) and `In`. Always: what it breaks (`Icn`) and the
/// share of a cable's rating it may have (`In.share`). With `t`: the current that operates it in
/// that time
/// (`Ia`), the largest loop that gives it (`Zs`), and the same without voltage factor (`Zs.whole`).
/// With `I`, or `times` its rating: by when it has operated (`t.op`), how long it holds (`t.hold`)
/// and the energy it may let through (`I2t`).
Results device(const support::PublishedCase& published);

/// Two devices, `up.` and `down.` before their words: the current up to which they are selective
/// (`Is`) for a fault of `I`; 0 where they are not.
Results selectivity(const support::PublishedCase& published);

/// Break times of a `kind` of residual current device at `times` its rated current.
Results residual_times(const support::PublishedCase& published);

/// The largest electrode that a device of the shop of that sensitivity (`IdN`) may rely on.
Results largest_electrode(const support::PublishedCase& published);

}  // namespace toft::published
