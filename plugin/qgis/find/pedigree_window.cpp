// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/pedigree_window.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPainter>
#include <QPushButton>
#include <QSaveFile>
#include <QSvgRenderer>
#include <QVBoxLayout>
#include <algorithm>

#include "text.h"

namespace pipward::desktop {
namespace {

constexpr int usual_width = 1100;

const operation::MadeFile* file_named(const operation::Outcome& outcome, std::string_view name) {
    const auto found = std::ranges::find(outcome.files, name, &operation::MadeFile::name);
    return found == outcome.files.end() ? nullptr : &*found;
}

QByteArray bytes_of(const operation::MadeFile* file) {
    return file == nullptr ? QByteArray()
                           : QByteArray(file->content.data(), static_cast<int>(file->content.size()));
}

}  // namespace

PedigreeDrawing::PedigreeDrawing(const QByteArray& svg, QWidget* parent)
    : QWidget(parent), drawing_(std::make_unique<QSvgRenderer>(svg)) {
    setObjectName(QStringLiteral("pipward_pedigree_drawing"));
    setMinimumSize(400, 280);
}

PedigreeDrawing::~PedigreeDrawing() = default;

bool PedigreeDrawing::is_drawn() const {
    return drawing_->isValid();
}

QSize PedigreeDrawing::sizeHint() const {
    const auto shape = drawing_->defaultSize();
    return shape.isEmpty() ? QSize(usual_width, usual_width * 7 / 10)
                           : shape.scaled(usual_width, usual_width, Qt::KeepAspectRatio);
}

// Paper is white whatever the desktop's colours are.
void PedigreeDrawing::paintEvent(QPaintEvent* event) {
    Q_UNUSED(event)
    const auto shape = QSizeF(drawing_->defaultSize()).scaled(size(), Qt::KeepAspectRatio);
    const QRectF page(QPointF((width() - shape.width()) / 2, (height() - shape.height()) / 2), shape);
    QPainter painter(this);
    painter.fillRect(page, Qt::white);
    drawing_->render(&painter, page);
}

PedigreeWindow::PedigreeWindow(const QString& name, std::shared_ptr<const operation::Outcome> outcome,
                               QWidget* parent)
    : QDialog(parent), name_(name), outcome_(std::move(outcome)) {
    setObjectName(QStringLiteral("pipward_pedigree_window"));
    setWindowTitle(tr("Pedigree of %1").arg(name));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* words = new QLabel(said(outcome_->summary));
    words->setTextFormat(Qt::PlainText);
    words->setWordWrap(true);
    auto* save = new QPushButton(tr("Save as PDF…"));
    auto* close = new QPushButton(tr("Close"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(words, 1);
    buttons->addWidget(save);
    buttons->addWidget(close);
    auto* all = new QVBoxLayout(this);
    all->addWidget(new PedigreeDrawing(bytes_of(file_named(*outcome_, "pedigree.svg"))), 1);
    all->addLayout(buttons);
    connect(save, &QPushButton::clicked, this, &PedigreeWindow::keep);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
}

void PedigreeWindow::keep() {
    const auto path = QFileDialog::getSaveFileName(this, tr("Save as PDF"), name_ + QStringLiteral(".pdf"),
                                                   tr("PDF (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    QSaveFile file(path);
    const auto pdf = bytes_of(file_named(*outcome_, "pedigree.pdf"));
    const bool kept = file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size() && file.commit();
    if (!kept) {
        QMessageBox::warning(this, windowTitle(), tr("%1 could not be written.").arg(path));
    }
}

}  // namespace pipward::desktop
