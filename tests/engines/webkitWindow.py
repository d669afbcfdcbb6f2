"""A window with nothing in it but WebKit, driven from outside, that keeps its profile.

Arguments: the folder of the profile, and the size of the window in pixels.
"""

import sys

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import GLib, Gtk, WebKit2  # noqa: E402

# WebKit writes local storage half a second after it was set, and ends with what is not written yet.
WRITTEN_S = 2

profile, width, height = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
manager = WebKit2.WebsiteDataManager(
    base_data_directory=f"{profile}/data", base_cache_directory=f"{profile}/cache"
)
context = WebKit2.WebContext(website_data_manager=manager)
context.set_automation_allowed(True)


def open_window(_session):
    view = WebKit2.WebView(web_context=context, is_controlled_by_automation=True)
    window = Gtk.Window()
    window.set_default_size(width, height)
    window.add(view)
    view.connect("close", lambda _view: window.destroy())
    window.connect("destroy", lambda _window: GLib.timeout_add_seconds(WRITTEN_S, Gtk.main_quit))
    window.show_all()
    return view


def begin(_context, session):
    about = WebKit2.ApplicationInfo()
    about.set_name("lapstrip")
    session.set_application_info(about)
    session.connect("create-web-view", open_window)


context.connect("automation-started", begin)
Gtk.main()
