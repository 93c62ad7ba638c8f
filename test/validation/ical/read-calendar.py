"""Reads calendars with python3-icalendar (Debian), which is not ours, and says what it found.

stdin: a JSON list of iCalendar texts. stdout: a JSON list, one object for each: the properties of the calendar and its
entries, each value as the library understands it.

    echo '["BEGIN:VCALENDAR..."]' | /usr/bin/python3 read-calendar.py
"""

import datetime
import json
import sys

from icalendar import Calendar


def alarm(component):
    trigger = component["TRIGGER"].dt
    assert isinstance(trigger, datetime.timedelta), trigger
    return {
        "action": str(component["ACTION"]),
        "secondsBefore": -int(trigger.total_seconds()),
        "description": str(component["DESCRIPTION"]),
    }


def entry(component):
    start = component["DTSTART"].dt
    # A datetime is a date as well, so the type itself is asked for.
    assert type(start) is datetime.date, type(start)
    location = component.get("LOCATION")
    return {
        "uid": str(component["UID"]),
        "start": start.isoformat(),
        "summary": str(component["SUMMARY"]),
        "languages": sorted({component[name].params["LANGUAGE"] for name in ("SUMMARY", "DESCRIPTION")}),
        "description": str(component["DESCRIPTION"]),
        "location": None if location is None else str(location),
        "transparency": str(component["TRANSP"]),
        "class": str(component["CLASS"]),
        "sequence": int(component["SEQUENCE"]),
        "stamp": component["DTSTAMP"].dt.isoformat(),
        "alarms": [alarm(child) for child in component.subcomponents if child.name == "VALARM"],
        "errors": [str(error) for error in component.errors],
    }


def calendar(text):
    found = Calendar.from_ical(text.encode("utf-8"))
    return {
        "version": str(found["VERSION"]),
        "producer": str(found["PRODID"]),
        "method": str(found["METHOD"]),
        "errors": [str(error) for error in found.errors],
        "entries": [entry(component) for component in found.walk("VEVENT")],
    }


json.dump([calendar(text) for text in json.load(sys.stdin)], sys.stdout, ensure_ascii=False)
