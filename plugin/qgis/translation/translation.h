// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>
#include <QTranslator>

namespace pipward::desktop {

/// The plugin's texts in another language than English, for as long as this lives. Where there are none in
/// the language, texts stay English.
class Translation {
  public:
    /// "de", "de_AT" ...: as the desktop names its own language.
    explicit Translation(const QString& language);
    ~Translation();
    Translation(const Translation&) = delete;
    Translation& operator=(const Translation&) = delete;

    bool found() const { return found_; }

  private:
    QTranslator texts_;
    bool found_ = false;
};

}  // namespace pipward::desktop
