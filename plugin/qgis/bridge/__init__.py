# SPDX-License-Identifier: GPL-2.0-or-later
"""Lets the desktop's headless runner and its plugin manager see the compiled plugin: nothing is computed here."""
import ctypes
import os


ADDED = 0  # otherwise the compiled plugin was here before: the provider is its own to take away


class Bridge:
    def __init__(self, iface):
        self.library = None

    def initProcessing(self):
        here = os.path.dirname(os.path.abspath(__file__))
        self.library = ctypes.CDLL(os.path.join(here, "libpipward_desktop.so"))
        if self.library.pipward_register() != ADDED:
            self.library = None

    def initGui(self):
        self.initProcessing()

    def unload(self):
        if self.library is not None:
            self.library.pipward_unregister()
            self.library = None


def classFactory(iface):
    return Bridge(iface)
