// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What all sheets share.
#pragma once

#include "sheet/common_frame.h"
#include "sheet/common_text.h"
#include "sheet/pen.h"
