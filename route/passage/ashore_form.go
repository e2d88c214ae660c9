package passage

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
	"time"
)

// A Form is what only the paddlers can say of the plan they leave ashore. Any
// part may be empty: it is then a blank line on the paper, to be filled in by
// hand, never left out. In a file it is a JSON object with the names below.
type Form struct {
	ID        string      `json:"id,omitempty"` // of the trip, told to every holder
	Leader    Person      `json:"leader"`
	People    []Person    `json:"people,omitempty"` // the others
	Craft     []CraftLook `json:"craft,omitempty"`
	Clothing  string      `json:"clothing,omitempty"`  // what is worn, with its colours
	Flotation string      `json:"flotation,omitempty"` // with its colours
	Leash     string      `json:"leash,omitempty"`     // which kind, worn where
	Launch    string      `json:"launch,omitempty"`    // place, in words that a stranger finds
	Finish    string      `json:"finish,omitempty"`
	Vehicle   string      `json:"vehicle,omitempty"` // kind and colour, and where it stands
	Plate     string      `json:"plate,omitempty"`
	Shuttle   float64     `json:"shuttle_min,omitempty"` // minutes ashore to place the vehicle; 0: not said
	CallSign  string      `json:"call_sign,omitempty"`
	MMSI      string      `json:"mmsi,omitempty"` // nine digits
	Channels  string      `json:"channels,omitempty"`
	Phones    string      `json:"phones,omitempty"` // which telephone in which case
	Beacon    string      `json:"beacon,omitempty"` // its identity
	Lights    string      `json:"lights,omitempty"`
	Flares    string      `json:"flares,omitempty"`
	Whistle   string      `json:"whistle,omitempty"`
	Sources   string      `json:"sources,omitempty"` // of weather and tide, with the time of issue
	Contacts  []Person    `json:"contacts,omitempty"`
	Authority Person      `json:"authority"`           // the rescue authority and its number
	Grace     float64     `json:"grace_min,omitempty"` // minutes from the latest finish to the alarm, agreed; 0: 30
	CheckIns  []CheckIn   `json:"check_ins,omitempty"`
	Remarks   string      `json:"remarks,omitempty"`
}

// A Person is somebody named on the plan.
type Person struct {
	Name    string `json:"name,omitempty"`
	Phone   string `json:"phone,omitempty"`
	Age     string `json:"age_band,omitempty"`
	Ability string `json:"ability,omitempty"`
	Medical string `json:"medical,omitempty"`
}

// A CraftLook is what a board looks like to somebody who searches for it.
type CraftLook struct {
	Kind   string  `json:"kind,omitempty"`
	Length float64 `json:"length_m,omitempty"` // m
	Top    string  `json:"top,omitempty"`      // its colours from above
	Bottom string  `json:"bottom,omitempty"`   // and from below, as it floats upside down
	Marks  string  `json:"marks,omitempty"`    // name, number
	Count  int     `json:"count,omitempty"`    // 0: 1
}

// A CheckIn is a call that was agreed.
type CheckIn struct {
	Place string    `json:"place,omitempty"`
	Time  time.Time `json:"time"`
	With  string    `json:"with,omitempty"`
}

// defaultGrace is the time from the latest finish to the alarm when none was
// agreed, in minutes: a rule of the trade, without a source.
const defaultGrace = 30

// grace returns the agreed time to the alarm in seconds.
func (f Form) grace() float64 {
	if f.Grace == 0 {
		return defaultGrace * 60
	}
	return f.Grace * 60
}

// Check returns an error that wraps [ErrInput] and names the field that cannot
// be right: an MMSI that is not nine digits, a grace of more than six hours, a
// negative number or one that is not a number.
func (f Form) Check() error {
	if f.MMSI != "" && (len(f.MMSI) != 9 || strings.Trim(f.MMSI, "0123456789") != "") {
		return inputError("mmsi", fmt.Sprintf("%q", clip(f.MMSI)), "nine digits")
	}
	if !(f.Grace >= 0 && f.Grace <= 360) {
		return inputError("grace_min", f.Grace, "0 to 360 minutes: a time that a search can still use")
	}
	if !(f.Shuttle >= 0 && f.Shuttle <= 24*60) {
		return inputError("shuttle_min", f.Shuttle, "0 to 1440 minutes")
	}
	for i, c := range f.Craft {
		if !(c.Length >= 0 && c.Length <= 20) {
			return inputError(fmt.Sprintf("craft %d, length_m", i+1), c.Length, "0 to 20 m")
		}
		if c.Count < 0 || c.Count > 1000 {
			return inputError(fmt.Sprintf("craft %d, count", i+1), c.Count, "0 to 1000")
		}
	}
	return nil
}

// ReadForm reads a form from JSON, at most 32 MB. A member that the form does
// not have is an error, so that no telephone number is lost to a misspelt name.
//
// Errors wrap [ErrInput].
func ReadForm(r io.Reader) (Form, error) {
	data, err := readLimited(r)
	if err != nil {
		return Form{}, err
	}
	var f Form
	d := json.NewDecoder(bytes.NewReader(data))
	d.DisallowUnknownFields()
	if err := d.Decode(&f); err != nil {
		line := 1 + bytes.Count(data[:min(int(d.InputOffset()), len(data))], []byte("\n"))
		return Form{}, fmt.Errorf("%w: line %d: %s: want an object with the members of a form", ErrInput, line, strings.TrimPrefix(err.Error(), "json: "))
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return Form{}, fmt.Errorf("%w: more after the object: want one object", ErrInput)
	}
	if err := f.Check(); err != nil {
		return Form{}, err
	}
	return f, nil
}
