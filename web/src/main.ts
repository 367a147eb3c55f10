import { mount } from 'svelte';
import App from './App.svelte';
import type { Study } from './study';
import './style.css';

const text = document.getElementById('study')!.textContent!;
const study = JSON.parse(text) as Study;
document.title = `${study.name} · Platewright`;
mount(App, { target: document.getElementById('page')!, props: { study } });
