// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

/// Standard error as people see it, and the interrupt key.
namespace pipward::console {

/// From now on the interrupt key asks the work to stop; a second press ends the program at once.
void listen_for_interrupt();
bool interrupted();

/// A bar on standard error where that is a terminal; nothing elsewhere.
class ProgressBar {
  public:
    explicit ProgressBar(bool wanted);
    ~ProgressBar();
    ProgressBar(const ProgressBar&) = delete;
    ProgressBar& operator=(const ProgressBar&) = delete;

    void show(double share, std::string_view step);
    void clear();

  private:
    bool shown_ = false;
    bool wanted_ = false;
};

/// A line on standard error, whatever the names in it hold; on a terminal it is broken at the terminal's
/// width.
void tell(std::string_view line);

}  // namespace pipward::console
