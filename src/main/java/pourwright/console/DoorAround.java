package pourwright.console;

/** A door that changes some of what goes through another, and passes on the rest. */
abstract class DoorAround implements Door {
    /** The way to the person. */
    final Door door;

    DoorAround(Door door) {
        this.door = door;
    }

    @Override
    public void say(String line) {
        door.say(line);
    }

    @Override
    public int width() {
        return door.width();
    }

    @Override
    public boolean plain() {
        return door.plain();
    }

    @Override
    public boolean person() {
        return door.person();
    }
}
