"""Trusting the club's authority on a phone: what it means, how it is done, compared and ended.

Where the settings of phones are: iOS as its maker's support page on certificate profiles says; Android from memory, worded
so that another name of the menu is found too.
"""

TEXTS: dict[str, str] = {
    "title": "A secure connection to the desk",
    "why": "A phone gives the desk no place on the map and keeps no book for out of reach unless the connection is secure. "
    "On a network without internet the club signs for that itself, and this phone has to trust the club's signature once.",
    "means": "What trusting means",
    "means.what": "Whoever holds the club's key could pretend to this phone to be a page of a private network: the desk, a "
    "printer, a router. The signature can vouch for private addresses and local names only, not for pages on the internet.",
    "means.only": "Do it only if an official asked you to, and end it after the event.",
    "take": "1. Take the certificate",
    "take.do": "Take the certificate",
    "compare": "2. Compare",
    "compare.how": "This page could have been changed on its way. Before you trust the certificate, the SHA-256 fingerprint that the phone "
    "shows must be the one on the chief referee's own screen, every pair. It is not told here, where it could have been changed too. "
    "Where they differ, trust nothing and say so.",
    "ios": "3. Trust it: iOS",
    "ios.install": "Open Settings. Choose “Profile Downloaded”, or General, “VPN & Device Management”, and install the profile.",
    "ios.compare": "Under “VPN & Device Management” the profile shows the fingerprint, in the details of its certificate.",
    "ios.trust": "Open General, About, “Certificate Trust Settings”, and turn on full trust for it, once you have compared.",
    "android": "3. Trust it: Android",
    "android.install": "Open Settings and search for “CA certificate” (under security, credentials). Choose it, and the file just taken.",
    "android.compare": "Compare the fingerprint under trusted credentials, user. Remove it there if it differs.",
    "others": "Other devices: import it in the settings of the browser or the system as a certificate authority, for websites alone.",
    "then": "4. Open the desk",
    "then.do": "Open the desk",
    "then.warned": "If the browser still warns, the phone does not trust it yet. Never go on past that warning.",
    "end": "Ending it",
    "end.how": "After the event, remove the profile (iOS) or the user certificate (Android) in the same place. The desk then counts as insecure again.",
    "hand_out": "A phone's first step: trust the club's signature",
    "hand_out.how": "Have this code scanned before a phone opens the desk. The phone must show this fingerprint before its owner trusts it:",
    "hand_out.code": "The address of the certificate as a code to be scanned",
}
