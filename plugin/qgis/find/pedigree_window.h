// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QDialog>
#include <memory>

#include "pipward/operation/operation.h"

class QSvgRenderer;

namespace pipward::desktop {

/// A drawing that fills its widget as far as its shape allows.
class PedigreeDrawing : public QWidget {
    Q_OBJECT
  public:
    explicit PedigreeDrawing(const QByteArray& svg, QWidget* parent = nullptr);
    ~PedigreeDrawing() override;

    bool is_drawn() const;

  protected:
    void paintEvent(QPaintEvent* event) override;
    QSize sizeHint() const override;

  private:
    std::unique_ptr<QSvgRenderer> drawing_;
};

/// The line of an accession as its operation draws it, to look at and to keep as PDF.
class PedigreeWindow : public QDialog {
    Q_OBJECT
  public:
    PedigreeWindow(const QString& name, std::shared_ptr<const operation::Outcome> outcome,
                   QWidget* parent = nullptr);

  private:
    void keep();

    QString name_;
    std::shared_ptr<const operation::Outcome> outcome_;
};

}  // namespace pipward::desktop
