# SPDX-License-Identifier: GPL-2.0-or-later
"""Run inside the real desktop: the plugin is loaded, plans from its panel, shows trees, reports trouble, unloads without a trace.

The folder with the book is the working directory; pictures are left there.
"""
import os
import sys
import time
import traceback

from qgis.core import QgsApplication, QgsProject, QgsTemporalNavigationObject, QgsVectorLayer
from qgis.gui import QgsFileWidget, QgsGui
from qgis.PyQt.QtCore import Q_ARG, QDate, QMetaObject, QObject, QPoint, Qt, QTimer
from qgis.PyQt.QtTest import QTest
from qgis.PyQt.QtWidgets import (QAction, QApplication, QComboBox, QDateEdit, QDockWidget, QLabel, QLineEdit, QListWidget,
                                 QPushButton, QTabWidget, QTreeView, QTreeWidget, QWidget)
from qgis.utils import iface

BOOK = "larkfold.gpkg"


def wait_for(what, condition, seconds=30):
    end = time.time() + seconds
    while time.time() < end:
        QApplication.processEvents()
        if condition():
            return
        time.sleep(0.01)
    raise AssertionError("waited in vain for " + what)


def pause(seconds):
    end = time.time() + seconds
    while time.time() < end:
        QApplication.processEvents()
        time.sleep(0.01)


def provider():
    return QgsApplication.processingRegistry().providerById("pipward")


def trees_layer():
    layer = QgsVectorLayer(BOOK + "|layername=tree", "trees", "ogr")
    assert layer.isValid()
    QgsProject.instance().addMapLayer(layer)
    iface.zoomFull()
    return layer


def planned_labels():
    windows = QgsVectorLayer(BOOK + "|layername=bloom_window", "windows", "ogr")
    assert windows.isValid(), "the book has no bloom windows"
    return {f["tree"] for f in windows.getFeatures() if f["tree"]}


def notes_of(label):
    notes = QgsVectorLayer(BOOK + "|layername=bloom_observation", "notes", "ogr")
    return [f["bbch"] for f in notes.getFeatures() if f["tree"] == label]


def click_tree(layer, label):
    canvas = iface.mapCanvas()
    place = next(f for f in layer.getFeatures() if f["label"] == label).geometry().asPoint()
    canvas.setCenter(canvas.mapSettings().layerToMapCoordinates(layer, place))
    canvas.refresh()
    wait_for("the map", lambda: not canvas.isDrawing())
    at = canvas.getCoordinateTransform().transform(canvas.mapSettings().layerToMapCoordinates(layer, place))
    QTest.mouseClick(canvas.viewport(), Qt.LeftButton, Qt.NoModifier, QPoint(round(at.x()), round(at.y())))


def note_at_a_tree(window, layer):
    window.findChild(QAction, "pipward_record_action").trigger()
    click_tree(layer, "LO-04-07")
    form = window.findChild(QWidget, "pipward_record_form")
    button = form.findChild(QPushButton, "pipward_record_button")
    wait_for("the form", button.isEnabled)
    form.findChild(QDateEdit, "pipward_record_day").setDate(QDate(2026, 5, 12))
    stage = form.findChild(QComboBox, "pipward_record_stage")
    stage.setCurrentIndex(stage.findData(61))
    before = notes_of("LO-04-07")
    QTest.mouseClick(button, Qt.LeftButton)
    wait_for("the note in the book", lambda: notes_of("LO-04-07") == before + [61])
    wait_for("the undo button", lambda: window.findChild(QPushButton, "pipward_record_undo_button") is not None)
    pause(0.7)
    window.grab().save("record-bloom.png")
    QTest.mouseClick(window.findChild(QPushButton, "pipward_record_undo_button"), Qt.LeftButton)
    wait_for("the note to be taken back", lambda: notes_of("LO-04-07") == before)
    wait_for("noting again to be offered", window.findChild(QAction, "pipward_record_redo").isEnabled)
    note_what_cannot_be(window, form, button)


def note_what_cannot_be(window, form, button):
    """A tag that is used already, and pollen of another donor: told beside the form, not written."""
    pages = form.findChild(QTabWidget, "pipward_record_pages")
    pages.setCurrentIndex(1)
    lot = form.findChild(QComboBox, "pipward_record_lot")
    wait_for("the page", button.isEnabled)
    lot.setCurrentIndex(1)
    form.findChild(QLineEdit, "pipward_record_tag").setText("25-03-b")
    QTest.mouseClick(button, Qt.LeftButton)
    findings = form.findChild(QLabel, "pipward_record_findings")
    wait_for("the findings", lambda: "25-03-b" in findings.text())
    assert lot.currentIndex() == 1, "what was chosen is lost when the book is read anew"
    pause(0.7)
    window.grab().save("note-findings.png")
    pages.setCurrentIndex(2)
    pause(0.3)
    window.grab().save("record-harvest.png")
    iface.messageBar().clearWidgets()


def full_bloom_of(label):
    windows = QgsVectorLayer(BOOK + "|layername=bloom_window", "windows", "ogr")
    return next(f["full_p50"] for f in windows.getFeatures() if f["tree"] == label)


def a_note_changes_the_plan(window, layer, panel, button):
    """Buds seen later than expected: the tree's bloom, and with it the orchard's, is foretold later."""
    panel.findChild(QDateEdit).setDate(QDate(2026, 4, 10))
    QTest.mouseClick(button, Qt.LeftButton)
    wait_for("the plan before the note", button.isEnabled)
    before = full_bloom_of("LO-01-05")
    click_tree(layer, "LO-01-05")
    form = window.findChild(QWidget, "pipward_record_form")
    note = form.findChild(QPushButton, "pipward_record_button")
    form.findChild(QTabWidget, "pipward_record_pages").setCurrentIndex(0)
    wait_for("the form", lambda: note.isEnabled() and "LO-01-05" in form.findChild(QLabel, "pipward_record_tree").text())
    form.findChild(QDateEdit, "pipward_record_day").setDate(QDate(2026, 4, 10))
    stage = form.findChild(QComboBox, "pipward_record_stage")
    stage.setCurrentIndex(stage.findData(55))
    noted = len(notes_of("LO-01-05"))
    QTest.mouseClick(note, Qt.LeftButton)
    wait_for("the note in the book", lambda: len(notes_of("LO-01-05")) == noted + 1)
    window.findChild(QDockWidget, "pipward_season_dock").setUserVisible(True)
    QTest.mouseClick(button, Qt.LeftButton)
    wait_for("the plan after the note", button.isEnabled)
    assert full_bloom_of("LO-01-05") > before, "late buds do not make the bloom later"
    pause(0.5)
    window.grab().save("after-note.png")


def draw(canvas, center, scale):
    drawn = []
    canvas.mapCanvasRefreshed.connect(lambda: drawn.append(True))
    canvas.setCenter(center)
    canvas.zoomScale(scale)
    canvas.refresh()
    wait_for("the map to be drawn", lambda: drawn and not canvas.isDrawing())


def open_map(window):
    """The menu entry opens the stored map, whole; the panel's button lets it play the bloom day by day."""
    iface.messageBar().clearWidgets()
    QgsProject.instance().setDirty(False)
    opener = window.findChild(QObject, "pipward_book_opener")
    assert opener is not None, "the menu entry is not there"
    QMetaObject.invokeMethod(opener, "open", Qt.DirectConnection, Q_ARG(str, BOOK))
    project = QgsProject.instance()
    wait_for("the map", lambda: project.fileName().startswith("geopackage:") and project.count() > 20)
    layers = project.mapLayers()
    assert all(layer.isValid() for layer in layers.values()), [n for n, l in layers.items() if not l.isValid()]
    chosen = window.findChild(QWidget, "pipward_season_panel").findChild(QgsFileWidget).filePath()
    assert chosen == BOOK, "the season panel does not take the book that was opened"
    assert all(r.isValid() for r in project.relationManager().relations().values())
    assert project.crs().authid() == "EPSG:25832"
    canvas = iface.mapCanvas()
    assert canvas.extent().contains(layers["pipward_tree"].extent()), "the map does not open on the trees"
    middle = next(f for f in layers["pipward_tree"].getFeatures() if f["label"] == "LO-03-05").geometry().asPoint()
    for name in ("Browser", "pipward_season_dock", "pipward_tree_dock"):
        window.findChild(QDockWidget, name).hide()
    draw(canvas, middle, 320)
    window.grab().save("map.png")
    QTest.mouseClick(window.findChild(QPushButton, "pipward_play_bloom"), Qt.LeftButton)
    wait_for("the first day", lambda: not canvas.temporalRange().isInfinite())
    assert canvas.temporalRange().begin().date().year() == 2026
    wait_for("the tenth day", lambda: canvas.temporalRange().begin().date() > QDate(2026, 4, 24))
    shown = canvas.temporalRange()
    assert shown.begin().secsTo(shown.end()) <= 24 * 3600, "a step should be a day"
    canvas.temporalController().pause()
    draw(canvas, middle, 320)
    window.grab().save("bloom.png")
    window.findChild(QDockWidget, "pipward_season_dock").show()
    assert window.findChild(QLabel, "pipward_day_shown").isVisible(), "the day is not on the map"
    QTest.mouseClick(window.findChild(QPushButton, "pipward_play_bloom"), Qt.LeftButton)
    assert canvas.temporalRange().isInfinite(), "the map stays on one day"
    assert canvas.temporalController().navigationMode() == QgsTemporalNavigationObject.NavigationOff
    wait_for("the day to go", lambda: window.findChild(QLabel, "pipward_day_shown") is None)
    project.setDirty(False)


def within(widget, class_name):
    while widget is not None:
        if widget.metaObject().className() == class_name:
            return True
        widget = widget.parent()
    return False


def card_title(window):
    dock = window.findChild(QDockWidget, "pipward_tree_dock")
    title = window.findChild(QLabel, "pipward_card_title")
    return title.text() if dock is not None and dock.isVisible() else None


def find_in_search_bar(window):
    line = next(w for w in window.findChildren(QLineEdit) if within(w, "QgsLocatorWidget"))
    results = next(w for w in window.findChildren(QTreeView) if w.metaObject().className() == "QgsLocatorResultsView")
    before = iface.mapCanvas().extent().width()
    line.setFocus()
    QTest.keyClicks(line, "pip tansy lane x wrenlea 4")

    def shown():
        return " ".join(str(results.model().index(row, 0).data()) for row in range(results.model().rowCount()))

    wait_for("the search bar's result", lambda: "UP-04-04" in shown())
    window.grab().save("search-bar.png")
    QTest.keyClick(line, Qt.Key_Return)
    wait_for("the card", lambda: card_title(window) == "UP-04-04")
    wait_for("the map to zoom to the tree", lambda: iface.mapCanvas().extent().width() < before / 2)


def draw_line(window):
    wait_for("the line button", lambda: window.findChild(QPushButton, "pipward_pedigree_button").isEnabled())
    QTest.mouseClick(window.findChild(QPushButton, "pipward_pedigree_button"), Qt.LeftButton)

    def drawn():
        return next((w for w in QApplication.topLevelWidgets() if w.objectName() == "pipward_pedigree_window" and w.isVisible()), None)

    wait_for("the drawing of the line", lambda: drawn() is not None)
    QApplication.processEvents()
    drawn().grab().save("line.png")
    drawn().close()


def find_in_panel(window, panel):
    line = panel.findChild(QLineEdit, "pipward_find_query")
    found = panel.findChild(QListWidget, "pipward_found")
    QTest.keyClicks(line, "Ketlefen")
    wait_for("trees in the list", lambda: found.count() > 3 and "Kettlefen" in found.item(0).text())
    QTest.keyClick(line, Qt.Key_Down)
    QTest.keyClick(line, Qt.Key_Return)
    wait_for("the card of the second", lambda: card_title(window) == found.item(1).text().split(",")[0])
    QApplication.processEvents()
    window.grab().save("find.png")
    line.clear()


def identify(window, layer):
    action = next(a for a in QgsGui.mapLayerActionRegistry().mapLayerActions(layer) if a.objectName() == "pipward_card_action")
    tree = next(f for f in layer.getFeatures() if f["label"] == "UP-04-07")
    action.triggerForFeature(layer, tree)
    wait_for("the identified tree's card", lambda: card_title(window) == "UP-04-07")
    QApplication.processEvents()
    window.grab().save("card.png")


def scenario():
    window = iface.mainWindow()
    window.move(0, 0)
    window.resize(1400, 900)
    assert provider() is not None, "the provider is not there"
    layer = trees_layer()
    assert layer.temporalProperties().isActive(), "a layer of the book lost its times"
    panel = window.findChild(QWidget, "pipward_season_panel")
    assert panel is not None, "the panel is not there"
    panel.findChild(QDateEdit).setDate(QDate(2026, 3, 20))
    path = panel.findChild(QgsFileWidget).findChild(QLineEdit)
    path.setText(BOOK)
    button = [b for b in panel.findChildren(QPushButton) if b.isEnabled() and b.text()][0]

    QTest.mouseClick(button, Qt.LeftButton)
    assert not button.isEnabled(), "planning should go on in the background"
    wait_for("the plan", button.isEnabled)
    assert panel.findChild(QTreeWidget, "pipward_crosses").topLevelItemCount() > 10
    planned = planned_labels()
    assert len(planned) > 100, "the results are not in the book"

    before = iface.mapCanvas().extent().width()
    chart = panel.findChild(QWidget, "pipward_bloom_chart")
    QTest.mouseClick(chart, Qt.LeftButton, Qt.NoModifier, QPoint(200, 80))
    wait_for("the map to zoom", lambda: iface.mapCanvas().extent().width() < before / 2)
    assert layer.selectedFeatureCount() > 0, "the accession's trees are not selected"
    window.grab().save("panel.png")

    iface.zoomFull()
    find_in_search_bar(window)
    draw_line(window)
    find_in_panel(window, panel)
    identify(window, layer)

    layer.startEditing()
    first = next(f for f in layer.getFeatures() if f["label"] in planned)
    layer.changeAttributeValue(first.id(), layer.fields().lookupField("removed_on"), QDate(2026, 1, 10))
    assert layer.commitChanges(), layer.commitErrors()
    QTest.mouseClick(button, Qt.LeftButton)
    wait_for("the second plan", button.isEnabled)
    assert planned_labels() == planned - {first["label"]}, "a tree removed in the desktop is still planned with"

    note_at_a_tree(window, layer)
    window.findChild(QDockWidget, "pipward_season_dock").setUserVisible(True)
    a_note_changes_the_plan(window, layer, panel, button)

    open_map(window)

    iface.messageBar().clearWidgets()
    path.setText("nowhere.gpkg")
    QTest.mouseClick(button, Qt.LeftButton)
    wait_for("the trouble to be told", lambda: button.isEnabled() and len(iface.messageBar().items()) > 0)

    plugin = window.findChild(QObject, "pipward_plugin") or QgsApplication.instance().findChild(QObject, "pipward_plugin")
    assert plugin is not None, "the plugin object is not there"
    QMetaObject.invokeMethod(plugin, "unload", Qt.DirectConnection)
    QApplication.processEvents()
    assert provider() is None, "the provider was left behind"
    assert window.findChild(QAction, "pipward_record_action") is None, "an action was left behind"
    assert window.findChild(QObject, "pipward_book_opener") is None, "the menu entry was left behind"
    assert not [d for d in window.findChildren(QDockWidget) if d.objectName().startswith("pipward")], "the dock was left behind"


def main():
    result = 1
    try:
        scenario()
        result = 0
    except BaseException:
        traceback.print_exc()
        iface.mainWindow().grab().save("failed.png")
    finally:
        sys.stderr.flush()
        os._exit(result)


iface.initializationCompleted.connect(lambda: QTimer.singleShot(0, main))
