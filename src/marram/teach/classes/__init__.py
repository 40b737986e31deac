"""What a class understood: its answers read by the provisions that the questions rest on."""
